import { sayDecimal } from '../say-figure.ts';

const entries = (count: number): string => (count === 1 ? '1 entry' : `${sayDecimal(count)} entries`);

/** A tablet away from the workshop's computer, and back. */
export const awayWords = {
  saved: 'saved on this tablet and the workshop',
  waiting: (count: number) => `${entries(count)} on this tablet, waiting for the workshop`,
  sending: (count: number) => (count === 0 ? 'sending' : `sending ${entries(count)}`),
  notLasting: (count: number) =>
    `${entries(count)} in this window only: this browser keeps nothing, so leave it open until the workshop answers`,
  needsPairing: (count: number) =>
    `${entries(count)} on this tablet: it has to be paired with the workshop again`,
  needsPerson: (count: number) => `${entries(count)} on this tablet: enter your PIN to send them`,
  away: 'not connected',
  knownAt: (time: string) => `Not connected: as known at ${time}.`,
  awaySays:
    'What you enter at the bench is kept on this tablet and sent when the workshop answers. Other pages have to wait for it.',
  onTabletOnly: 'on this tablet only',
  finishWaits: (count: number) =>
    `${entries(count)} of this batch are still on this tablet. Finish once the workshop has them.`,
} as const;
