import { sayDecimal } from '../say-figure.ts';

const listOf = new Intl.ListFormat('en-GB', { type: 'conjunction' });

/** How much scent a formula may have. */
export const scentWords = {
  title: (formula: string) => `How much scent: ${formula}`,
  open: 'How much scent?',
  none: 'Say which lines are scent: then the answer stands here.',
  working: 'Working it out …',
  most: (percent: string) => `At most ${percent} % scent`,
  decides: (name: string, whose: string, where: string) => `${name} decides (${whose}${where}).`,
  where: (places: string) => `; ${places}`,
  leastDecides: (name: string, least: string, whose: string) =>
    `with more of it, ${name} would fall under the ${least} % that is asked for (${whose}).`,
  alsoMet: (names: readonly string[]) => `As much as may be, too: ${listOf.format(names)}.`,
  ownMost: 'your own maximum decides.',
  ownLimit: 'your own maximum',
  notNow: (count: number) =>
    count === 1
      ? 'Not worked out: one thing that is typed cannot be used. It is told where it stands.'
      : `Not worked out: ${sayDecimal(count)} things that are typed cannot be used. Each is told where it stands.`,
  noLimit:
    'No limit found; this is not permission. Give the most that the report or the workshop allows, and it is held to.',
  prohibited: (name: string) => `${name} may not be in it at all: none of this blend may be used as it is.`,
  overWithout: (names: string) => `Without any scent it is over already: ${names}.`,
  soft: 'Worked out from the most that each oil may hold, by the rules of the check. It prepares; the qualified assessor decides.',
  which: 'Which lines are scent',
  isScent: (name: string) => `${name} is scent`,
  how: 'The proportions',
  fixed: 'as given here',
  free: 'free, within a range for each',
  part: (name: string) => `Parts of ${name}`,
  leastOf: (name: string) => `${name}, at the least`,
  mostOf: (name: string) => `${name}, at the most`,
  rangeHint: 'Percent of the scent; empty: from none to all.',
  ownMaximum: 'At most, by the report or the workshop',
  batch: 'For a batch of',
  scale: 'Oils are weighed on',
  noScale: 'no scale: no error counted in',
  batchHint: 'With a batch and a scale the worst weighing stays within, too.',
  relief: (name: string, percent: string, then: string) =>
    `Without the limit on ${name} it would be ${percent} %; ${then}`,
  nextDecides: (name: string, whose: string) => `then ${name} would decide (${whose}).`,
  nextLeast: (name: string, least: string, whose: string) =>
    `then ${name} would fall under the ${least} % that is asked for (${whose}).`,
  reportDecides:
    'It is the report that decides, not the law: the assessor can be asked whether it may be more.',
  reliefNone: 'Nothing else that is known binds.',
  blend: 'The scent',
  oil: 'Oil',
  ofScent: 'Of the scent',
  ofProduct: 'Of the product',
  inBatch: 'In the batch',
  inRecipe: (grams: string) => `In the recipe of ${grams}`,
  tooSmall: (least: string) => `too small for this scale: it weighs from ${least}`,
  limits: 'What limits it, the closest first',
  met: 'as much as it may be',
  least: (name: string, percent: string, least: string) =>
    `The more scent, the less ${name}: at ${percent} % scent it would fall under ${least} %`,
  questions: 'What no table tells',
  questionsSoft:
    'With these amounts the check asks the same questions; none of them counts as allowed until it is decided there.',
  notInReport: (names: string) => `The report has no range for ${names}: ask the assessor before it is sold.`,
  use: 'Change the recipe so',
  picture: (text: string) => `Shares of the scent: ${text}`,
};
