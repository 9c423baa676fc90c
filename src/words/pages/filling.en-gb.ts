import { sayDecimal, sayGrams } from '../say-figure.ts';

/** Filling runs, their release, and labels. */
export const fillingWords = {
  startTitle: (batch: string) => `Fill from ${batch}`,
  startSays: 'Which tin, how many, on which scale?',
  product: 'Product',
  wanted: 'Tins wanted',
  scale: 'Scale',
  tare: 'Weight of the empty tin',
  tareHint: (knownGrams: string | null) =>
    knownGrams === null
      ? 'Mean of a few. Left empty, each tin is weighed empty first.'
      : `Mean of a few. Left empty, ${sayGrams(knownGrams)} is taken off, which is what this tin is known to weigh.`,
  start: 'Start filling',
  noProduct: 'No product is made of this mixture. Add one under Formulas, Products.',
  title: (number: string) => `Filling ${number}`,
  aim: 'Aim at, on the scale',
  aimNet: 'Aim, net',
  declared: 'Label states',
  gross: 'Grams on the scale',
  ownTare: 'This tin empty',
  enter: 'Keep this tin',
  farAboveTitle: 'Is there really so much in it?',
  farAboveSure: 'It is so: keep this tin',
  tinNumber: (number: number) => `Tin ${number}`,
  verdicts: { inside: 'right', 'too-light': 'too light', heavy: 'heavy' },
  /** T1 and T2 of the average system: nominal less one and less two tolerable errors. */
  lightBy: {
    label: 'below the label',
    'limit-1': 'more than the tolerable error short (below T1)',
    'limit-2': 'over twice the tolerable error short (below T2): may not be sold',
  },
  takeOut: 'Take it out',
  takeOutOf: (number: number) => `Take tin ${number} out`,
  takenOut: 'Too light: taken out, to be filled up or left out',
  surely: (grams: string) => `${grams} with the scale’s error taken off`,
  weights: 'Tins so far',
  tin: 'Tin',
  net: 'Net',
  verdict: 'Verdict',
  noWeights: 'No tin yet.',
  strike: 'Strike',
  strikeOf: (number: number) => `Strike tin ${number}`,
  strikeTitle: (number: number) => `Strike tin ${number}? Say whether it was refilled or put aside.`,
  strikeWhy: 'What happened to it',
  struck: 'struck',
  still: 'Still to fill',
  bowl: 'The bowl still fills',
  meanOf: (tins: number) =>
    tins === 1 ? 'The one tin that counts' : `Mean of the ${sayDecimal(tins)} tins that count`,
  mean: 'Mean',
  giveaway: 'Given away in each tin, on average',
  plotLabel: (count: number, declared: string) =>
    `${sayDecimal(count)} tins against the declared ${declared} g`,
  close: 'Filling is over',
  closeTitle: 'Close the run',
  closeSays: 'Count, keep the sample, weigh what is left.',
  keepSample: 'Keep a sample',
  sample: 'Sample',
  declineWhy: 'Why no sample is kept',
  left: 'Left in the bowl and kept',
  spoiltTins: 'Spoilt tins',
  spoiltLids: 'Spoilt lids',
  spoiltLabels: 'Spoilt labels',
  closed: (units: number, lost: string) =>
    `${units === 1 ? 'One tin' : `${sayDecimal(units)} tins`} filled; ${lost} stayed behind.`,
  checks: 'Before release',
  passed: 'passed',
  failed: 'not passed',
  look: 'look at it',
  release: 'Release for sale',
  reject: 'Reject',
  releaseTitle: 'Release in your name?',
  releaseSays:
    'You have seen the checks above, the tins and their labels. Only then can they be put aside for an order and sent.',
  reason: 'Remark or reason',
  released: (by: string) => `Released by ${by}.`,
  rejected: (by: string) => `Rejected by ${by}.`,
  label: 'Label',
  cost: 'What a tin really cost',
  costTotal: (total: string, isComplete: boolean) =>
    isComplete ? total : `at least ${total}: not every price is known`,
  perTin: (money: string, isComplete: boolean) => (isComplete ? `${money} a tin` : `at least ${money} a tin`),
  /** Why more stands here than in the tins. */
  costIncludes: 'all that was used: with the sample, what stayed in the bowl and what was spoilt',
  noPrice: 'price not known',
  trace: 'Trace it',
  makeOf: 'What',
  amount: 'How much',
  costs: 'Cost',
  bestBefore: (day: string) => `Best before ${day}`,
  limits: {
    minimum: (error: string, _one: string, two: string) =>
      `By the minimum way no tin may lie below the label. The law’s tolerable error is ${error} g: a tin below ${two} g (T2) may not be sold at all.`,
    average: (error: string, one: string, two: string) =>
      `The tolerable error is ${error} g: few tins may lie below ${one} g (T1), and one below ${two} g (T2) may not be sold at all.`,
  },
};

export const labelWords = {
  openPrint: 'Open the labels',
  title: 'Labels',
  says: (count: number) =>
    count === 0
      ? 'No filling run waits for its label.'
      : count === 1
        ? 'One filling run has its label here.'
        : `${sayDecimal(count)} filling runs have their labels here.`,
  empty: 'Labels belong to filling runs, since they carry batch number and date. Fill tins first.',
  open: 'Open the label',
  titleOf: (number: string) => `Label of ${number}`,
  complete: (market: string) => `The label is complete for ${market}.`,
  missing: (market: string, count: number) =>
    count === 1
      ? `One thing is missing for ${market}: no label for sale yet.`
      : `${sayDecimal(count)} things are missing for ${market}: no label for sale yet.`,
  soft: 'Shown at true size where the screen knows its size; the PDF is at true size when it is printed at 100 %.',
  market: 'Market',
  front: 'Front',
  back: 'Back',
  elements: 'What must stand on it',
  element: 'Element',
  text: 'Text',
  state: 'State',
  source: 'Where it is asked for',
  /** As people say it; the code of an element is its words with hyphens, but for one. */
  nameOf: (element: string) => (element === 'e-mark' ? element : element.replaceAll('-', ' ')),
  placeOf: (onContainer: boolean, onPackaging: boolean) => {
    if (onContainer) return onPackaging ? 'on container and packaging' : 'on the container';
    return onPackaging ? 'on the packaging, or on the container where there is no other' : '';
  },
  fromMemory: 'from memory, check',
  states: { there: 'there', missing: 'missing', 'not-needed': 'not needed' },
  copies: 'Copies',
  copiesHint: (printed: number) =>
    printed === 0
      ? 'One for each tin that has no label yet.'
      : `${sayDecimal(printed)} printed before. One for each tin that has no label yet.`,
  print: 'Print the label',
  copyText: 'Copy the ingredients',
  copied: 'Copied.',
  figure: (millimetres: string) => `The figures of the content must be at least ${millimetres} mm high.`,
  checkAgain:
    'Check spelling, symbols and place of each element against the tin in your hand; local law decides.',
};

export const traceWords = {
  title: 'Trace',
  says: "Which lot? A batch number, a supplier's lot number, an order that was sent, or a name.",
  search: 'Number or name',
  none: "No lot has that number or name. Type a batch number (lb-1 finds LB-0001), a supplier's lot number, the number of an order that was sent, or a part of the name of a material, a formula or a product.",
  hint: 'Type what stands on the tin or on the tub.',
  found: 'Lots',
  titleOf: (number: string) => `Trace of ${number}`,
  madeOf: 'What it was made of',
  madeOfNone: 'It was bought or found, not made here.',
  wentInto: 'What it went into',
  wentIntoNone: 'Nothing was made of it yet.',
  orders: 'Orders that got it',
  ordersNone: 'None of it was sent.',
  order: 'Order',
  customer: 'Customer',
  erased: 'erased',
  units: 'Tins',
  batch: 'Batch',
  sentOn: 'Sent',
  sent: 'Tins sent',
  onHand: 'Tins here',
  lot: 'Lot',
  item: 'What',
  amount: 'How much went into it',
  madeOfAside: 'with its share of what was lost in making, without sample and filling loss',
  /** A base lies between a butter and its materials. */
  through: (depth: number) =>
    depth === 1 ? 'directly' : depth === 2 ? 'through one other lot' : `through ${depth - 1} other lots`,
  how: 'How',
  state: 'State',
  status: { quarantine: 'in quarantine', released: 'released', rejected: 'rejected', blocked: 'blocked' },
  balance: 'Mass balance',
  received: 'Came in',
  used: 'Used',
  here: 'Here',
  waste: 'Waste, samples, gifts',
  unexplained: 'Unexplained',
  within: 'adds up',
  look: 'look again',
  cost: 'Cost',
  notKnown: 'not known',
};
