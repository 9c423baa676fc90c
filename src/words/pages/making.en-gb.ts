import { sayDecimal, sayGrams } from '../say-figure.ts';

/** Planning a batch, its weighing sheet, and the bench: one step a screen. */
export const makingWords = {
  title: 'Making',
  says: (going: number) =>
    going === 0
      ? 'Nothing is on the bench.'
      : going === 1
        ? 'One batch is on the bench.'
        : `${sayDecimal(going)} batches are on the bench.`,
  start: 'Start a batch',
  going: 'On the bench',
  noneGoing: 'Nothing is being made. Start a batch, or look what comes next on This morning.',
  done: 'Made before',
  noneDone: 'No batch was made yet.',
  goOn: 'Go on',
  look: 'Look',
  state: { making: 'being made', made: 'made', abandoned: 'given up' },
  runState: { filling: 'being filled', closed: 'to be released', released: 'released', rejected: 'rejected' },
  purpose: { sale: 'for sale', trial: 'trial, never for sale' },
  steps: (done: number, all: number) => `${done} of ${all} steps`,
  leftInBowl: (grams: string) => `${grams} still in the bowl`,

  planTitle: 'Plan a batch',
  planSays: 'What shall be made, and how much?',
  noFormula: 'A batch needs a formula first: nothing is written down yet.',
  toFormula: 'Write a formula down',
  noRecipe: 'A batch needs a recipe first: the formula has a name, but nothing in it yet.',
  toRecipe: 'Write the recipe down',
  what: 'What',
  how: 'How it is sized',
  byTins: 'From tins to fill',
  byGrams: 'From grams',
  grams: 'Grams to make',
  tinsOf: (product: string) => `Tins of ${product}`,
  retained: 'Grams kept as a sample',
  keepSample: 'Keep a small sample',
  lossPercent: 'What stays behind',
  lossHint: 'Left empty, as learnt from earlier batches, or as the product says.',
  declineWhy: 'Why no sample is kept',
  purposeTitle: 'What for',
  purposes: { sale: 'For sale', trial: 'A trial, never for sale' },
  markets: 'For which markets',
  work: 'Work it out',
  saysPlan: (grams: string, name: string) => `${grams} of ${name}.`,
  sheet: 'Weighing sheet',
  /** The plan's own total may differ by what no scale shows. */
  sheetSum: (grams: string) => `The weighings add up to ${grams}: each is what its scale can show.`,
  material: 'What',
  lot: 'Lot',
  target: 'Weigh',
  band: 'Wanted between',
  scale: 'Scale',
  error: 'Out by at most',
  noScale: 'no scale holds it',
  noLot: 'no lot',
  smallest: (grams: string) => `smallest weight for it on this scale: ${grams}`,
  short: 'Short',
  shortLine: (need: string, have: string) => `needs ${need}, has ${have}`,
  hindrances: { sale: 'Why it may not start for sale', trial: 'What would stop this batch for sale' },
  startSale: 'Start the batch',
  startTrial: 'Start as a trial',
  seeCheck: 'See the check',
  possible: (possible: number, wanted: number, product: string) =>
    possible >= wanted
      ? `${sayDecimal(wanted)} ${wanted === 1 ? 'tin' : 'tins'} of ${product}`
      : `${sayDecimal(possible)} of ${sayDecimal(wanted)} tins of ${product}`,
  makeInstead: (what: string) => `Make ${what} instead`,
  waitsForWord: (lot: string, grams: string) =>
    `${lot} stands there with ${grams}, and nobody has said yet that it is firm.`,
  itIsFirm: (lot: string) => `${lot} is firm`,
  cannotStart: 'It cannot start as it stands: what is in the way stands above.',
  sizing: 'How the size came about',

  stepOf: (screen: number, all: number) => `Step ${screen} of ${all}`,
  onScale: (scale: string) => `Weigh on ${scale}`,
  anyScale: 'Weigh on any scale',
  lotLine: (lot: string) => `Lot ${lot}`,
  weighOut: 'Weigh out',
  onTheScale: 'On the scale',
  inside: 'inside',
  low: 'too little',
  high: 'too much',
  nothingYet: 'type what the scale shows',
  /** In few words: the keys stand right below. */
  notAWeight: {
    'comma-for-point': (typed: string, allowed: string) =>
      `“${typed}”: a comma may part thousands or decimals. Type ${allowed} if it was the point.`,
    'not-a-number': (typed: string, _allowed: string) => `“${typed}” is not a number.`,
    'value-not-above': (typed: string, _allowed: string) => `“${typed}”: a weight is more than 0.`,
  },
  wantedBetween: (low: string, high: string) => `wanted: ${low} to ${high}`,
  bandLabel: (value: string, low: string, high: string) =>
    `${value} grams; right between ${low} and ${high} grams`,
  gramsIn: 'Grams on the scale',
  doneNext: (next: string) => `Done: next, ${next}`,
  doneLast: 'Done: that was the last',
  saved: 'saved at the workshop',
  saving: 'being saved',
  notSaved: 'not saved',
  back: 'Back',
  forward: 'Next step',
  differently: 'Something different?',
  differentlyTitle: 'What was done differently, and why?',
  outsideTitle: 'Not as planned: what happened, and why?',
  weighTub: 'Weigh the tub, come back here',
  overTitle: 'This breaks the limits or the report. What happened, and why?',
  keepOver: 'It stays in: keep it so',
  overHeld: {
    sale: 'As weighed, it may not be sold: held at its release',
    trial: 'As weighed, it could not be sold; a trial never is',
  },
  overMend: 'Strike the entry and weigh again, if the surplus can be taken out.',
  backToStrike: (item: string) => `Back to ${item}, to strike its entry`,
  overMade:
    'Tins filled from it are not released for sale: do not spend tins and labels on it before the assessor’s report covers it.',
  worksheet: 'Worksheet for the assessor',
  purposeHeld: 'for sale: held',
  struckTitle: 'Struck entries',
  struckWhat: (what: string, lot: string, grams: string) => `${what}, lot ${lot}: ${grams}`,
  struckBy: (by: string) => `struck by ${by}`,
  yieldSure: (grams: string) => `So much is gone: ${grams} are left`,
  whatHappened: 'What',
  why: 'Why',
  otherLot: 'Take it from another lot',
  otherLotHint: 'Then say why, since the sheet planned another.',
  strike: 'Strike this entry',
  strikeTitle: 'Strike the entry? It stays readable, and its grams go back to the lot.',
  strikeWhy: 'Why it is struck',
  weighed: (grams: string, by: string) => `${grams} weighed in by ${by}`,
  stepDone: (by: string) => `done by ${by}`,
  celsius: 'Temperature',
  minutes: 'Minutes',
  remark: 'Remark',
  nothingEntered: 'nothing entered',
  weighedGross: 'Grams on the scale',
  cupGross: 'The full cup',
  cupTare: 'The cup empty',
  cupMl: 'The cup holds',
  cupBefore: 'What it held before whipping',
  cupBeforeHint:
    'The same cup full of the butter unwhipped, its own weight taken off: tells how much air is in.',
  cupNet: (grams: string, density: string) => `${grams} in the cup: ${density} g in a millilitre.`,
  cupAir: (percent: string) => `Grown by ${percent} % in whipping (its overrun).`,
  cupTin: (product: string, takes: string, states: string, isRoom: boolean) =>
    isRoom
      ? `A tin of ${product} takes up to ${takes}; its label states ${states}.`
      : `A tin of ${product} takes only ${takes} to its brim, and its label states ${states}: too much air.`,
  wanted: (from: string | null, to: string | null) =>
    from !== null && to !== null
      ? `${from} to ${to} °C`
      : from !== null
        ? `from ${from} °C`
        : to !== null
          ? `up to ${to} °C`
          : '',
  wantedMinutes: (minutes: string) => `${minutes} min`,
  allDone: 'Everything is in. What came out?',
  wentIn: (grams: string) => `${grams} went in.`,
  allDoneSoft: 'Weigh bowl or tub: gross less tare.',
  gross: 'Gross',
  tare: 'Tare',
  net: (grams: string) => `net ${grams}`,
  finish: 'It is made',
  sheetPdf: 'Sheet and record',
  abandon: 'Give the batch up',
  abandonTitle: 'Give the batch up? What was weighed in stays used.',
  abandonWhy: 'Why',
  outcome: (out: string, put: string, lost: string) =>
    `${out} came out of ${put} put in; ${lost} stayed behind.`,
  abandonedSays: 'This batch was given up.',
  record: 'Record',
  by: 'By, and when',
  deviations: 'Done differently',
  /** `Plain base, 10.56 g more than asked: ` */
  deviationAt: (step: string | null, offGrams: string | null) => {
    if (step === null) return '';
    if (offGrams === null) return `${step}: `;
    const isLess = offGrams.startsWith('-');
    return `${step}, ${sayGrams(offGrams.replace('-', ''))} ${isLess ? 'less' : 'more'} than asked: `;
  },
  noDeviation: 'Nothing was done differently.',
  fill: 'Fill tins',
  seeLot: 'See its lot',
  seeFormula: 'See its formula',
  sayFirm: 'It is firm',
  runs: 'Filling runs',
  noRuns: 'Nothing was filled from it yet.',
  caution: 'Caution',
};
