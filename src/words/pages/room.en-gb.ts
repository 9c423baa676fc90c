import { sayNumber } from '../say-figure.ts';

/** Room to move: how far each line of a formula may go before something breaks. */
export const roomWords = {
  title: 'Room to move',
  says: 'One line alone moves; the others keep their proportions and make up the rest.',
  ofTried:
    'Of the amounts that are being tried. One line alone moves; the others keep their proportions and make up the rest.',
  working: 'Working out how far each line may move …',
  picture: (name: string, low: string, now: string, high: string) =>
    `${name}: ${now} %, between ${low} and ${high} %`,
  others: (count: number) => (count === 1 ? 'One more line' : `${sayNumber(count)} more lines`),
  bounds: 'Every bound, by what it is of',
  kinds: { label: 'Label', report: 'Report', limit: 'Limits' },
  /** Beside an end of the bar. */
  ends: { label: 'label', report: 'report', limit: 'limit' },
  from: (percent: string) => `from ${percent} %`,
  upTo: (percent: string) => `up to ${percent} %`,
  above: (percent: string) => `from above ${percent} %`,
  below: (percent: string) => `up to below ${percent} %`,
  free: 'no bound known',
  tryIt: (percent: string) => `Try ${percent} %`,
  tryLabel: (name: string, percent: string) => `Try ${name} at ${percent} %`,
  unknown: 'What is not known has no bound here: it is decided besides.',
} as const;
