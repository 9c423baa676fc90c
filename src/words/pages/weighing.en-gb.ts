import { sayDecimal, sayGrams } from '../say-figure.ts';

/** What is said where a weighing does not go as planned, on the record. */
export const mishapWords = {
  /** For the time being, until it has a name. */
  withoutRecipe: (on: string) => `Made without a recipe, ${on}`,
  part: (nth: number) => `Part ${sayDecimal(nth)}`,
  happened: 'Spilt, and made larger or smaller',
  resized: (wasGrams: string, isGrams: string) =>
    `Made ${Number(isGrams) < Number(wasGrams) ? 'smaller' : 'larger'}, from ${sayDecimal(wasGrams)} to ${sayGrams(isGrams)}, so that the percentages hold`,
  resizedBy: (item: string, reason: string) => (reason === '' ? item : `${item}. ${reason}`),
  photo: (caption: string) => `Photograph: ${caption}`,
  spilt: (item: string, grams: string, lot: string) => `${item}: ${sayGrams(grams)} spilt of lot ${lot}`,
  readFirst: (item: string, wasGrams: string) => `${item}: Read as ${sayGrams(wasGrams)} first`,
  readSure: (item: string, grams: string) => `${item}: ${sayGrams(grams)} was asked about`,
  putRight: 'A slip, put right before it counted.',
  isSure: 'Looked at again: it is right.',
  inVessel: (item: string, gross: string, tare: string) =>
    `${item}: weighed in a vessel, ${sayGrams(gross)} gross less ${sayGrams(tare)} tare`,
} as const;

/** The ways at the bench where a weighing does not go as planned. */
export const weighInWords = {
  menu: 'Too much, too little, spilt?',
  menuTitle: (item: string) => `${item}: what happened?`,
  tooMuch: 'Too much went in',
  tooMuchSoft: 'Make the rest larger, so that the percentages hold.',
  lotEmpty: 'The lot is empty',
  lotEmptySoft: 'What went in counts; the rest comes from another lot.',
  allThereIs: 'That is all there is',
  allThereIsSoft: 'Make the rest smaller, or leave it so.',
  spilt: 'Spilt before it went in',
  spiltSoft: 'Out of the lot, not in the bowl; weigh again.',
  substitute: 'Something else instead',
  substituteSoft: 'In a trial only.',
  keepOpen: 'Weigh on',
  takeOut: 'I take some out, and weigh again',
  addMore: 'I add more, and weigh again',
  checkFirst: (scale: string) => `First of all today: check ${scale}`,
  typeFirst: 'Type first what the scale shows.',

  tooMuchTitle: (item: string, grams: string) => `${item}: ${sayGrams(grams)} is too much`,
  tooLittleTitle: (item: string, grams: string) => `${item}: ${sayGrams(grams)} is too little`,
  offerTitle: (direction: 'larger' | 'smaller', was: string, is: string) =>
    `Make the batch ${direction}: ${sayGrams(is)} instead of ${sayGrams(was)}`,
  offerSays: 'Then every percentage is as the formula has it.',
  offerTap: (direction: 'larger' | 'smaller', is: string) => `Make it ${direction}: ${sayGrams(is)} in all`,
  offerNot: (direction: 'larger' | 'smaller') => `It cannot be made ${direction}:`,
  offerWait: 'Working out what the rest would be',
  offerAway:
    'The workshop does not answer: what the rest would be is worked out there. Keep it as it is for now; it can still be made larger afterwards.',
  open: (grams: string, was: string) => `${sayGrams(grams)} instead of ${sayGrams(was)}`,
  more: (left: string, inGrams: string) => `${sayGrams(left)} more, to the ${sayGrams(inGrams)} that are in`,
  enough: (inGrams: string) => `${sayGrams(inGrams)} are in: enough`,
  over: (inGrams: string, is: string) => `${sayGrams(inGrams)} are in, only ${sayGrams(is)} would be right`,
  through: (step: string) =>
    `What is in has been through “${step}” already: what comes to it has to go through it too.`,
  tins: (product: string, was: number, is: number) =>
    `${product}: ${sayDecimal(is)} tins instead of ${sayDecimal(was)}`,
  keepAsIs: 'Keep it as it is, and say why',
  keepOver: 'Leave it so, and hold the batch',
  overKeeps: 'As it is now:',

  autoOver: (grams: string, asked: string) => `${sayGrams(grams)} instead of ${sayGrams(asked)}`,
  // What becomes of the rest is told by its own entry, where there is one.
  autoOverWhy: 'Poured too much',
  autoUnderWhy: 'That is all there is',
  inNotResized: 'The weighing is entered. The rest was not made larger or smaller with it:',
  autoEmpty: (grams: string) => `${sayGrams(grams)} of it, the rest from another lot`,
  autoEmptyWhy: (lot: string) => `Lot ${lot} ran out`,

  lotEmptyTitle: (item: string) => `${item}: the lot is empty`,
  wentIn: (grams: string, lot: string) => `${sayGrams(grams)} went in from lot ${lot}.`,
  restFrom: (grams: string) => `The rest, about ${sayGrams(grams)}, from:`,
  restFromLot: (lot: string, onHand: string) => `Lot ${lot}, ${onHand} there`,
  noOtherLot: 'There is no other lot of it.',
  otherLotNow: (planned: string) => `Not lot ${planned} any more`,
  lotsNotKnown: 'Which other lots there are the workshop knows, and it does not answer.',
  bookEmpty: (lot: string, grams: string) =>
    `By the book lot ${lot} still has ${sayGrams(grams)}. What is true?`,
  bookEmptyTap: 'The tub is empty: book it so',
  bookWeigh: 'Weigh the tub',
  bookLater: 'Later',
  bookReason: (batch: string) => `Ran out at batch ${batch}`,

  spiltTitle: (item: string) => `${item}: how much was spilt?`,
  spiltGrams: 'Grams spilt',
  spiltWhy: 'What happened',
  spiltWhys: ['Knocked over', 'Fell on the floor', 'Vessel broke', 'Something fell in'],
  spiltAll: 'It was entered already: its entry is struck with it.',
  spiltTap: 'Book it as spilt',

  substituteTitle: (item: string) => `Something else instead of ${item}`,
  substituteSale:
    'This batch is for sale. Limits, the assessor’s report and the label were judged without it, so it cannot go in here. The way: write a new revision with it, have it checked, and make the batch by that.',
  substituteRevision: 'Write a new revision',
  substituteWhat: 'What goes in instead',
  substituteWhy: 'Why',
  substituteTap: 'Weigh it in instead',
  substituteWhatSaid: (other: string, item: string) => `${other} instead of ${item}`,

  closeTitle: (item: string, grams: string) => `${item}: leave it at ${sayGrams(grams)}?`,
  closeTap: 'Leave it so',

  soFar: (grams: string) => `${sayGrams(grams)} are in.`,
  part: (grams: string, lot: string, by: string) => `${sayGrams(grams)} of lot ${lot}, ${by}`,
  weighRest: 'Still to weigh',
  moreSince: 'The batch was made larger: this much more is needed.',
  strikePart: (grams: string) => `Strike the ${sayGrams(grams)}`,

  readingTitle: 'Is that right?',
  readingRight: (grams: string) => `Yes: ${sayGrams(grams)}`,
  readingMeant: (grams: string) => `No: it is ${sayGrams(grams)}`,
  readingPoint: (grams: string) => `The point slipped: it is ${sayGrams(grams)}`,
  readingUnit: (grams: string, found: string, unit: string) =>
    `The scale shows ${scaleUnits[unit] ?? unit}: ${sayDecimal(found)} are ${sayGrams(grams)}`,
  readingOnOther: (scale: string) => `It stood on ${scale}`,
  readingAgain: 'Read the scale again',

  tared: 'Scale tared',
  inVessel: 'In a vessel',
  gross: 'Scale shows, with the vessel',
  tare: 'Vessel empty',
  netTitle: 'Net, in it',
  netFigure: (grams: string) => sayGrams(grams),
  vesselHeavier: 'The vessel alone weighs that much, or more. Read both again.',
  otherScale: 'It stands on another scale',
  otherScaleNow: (before: string) => `Another scale than before (${before})`,
  scaleChoice: (scale: string, fit: string) => (fit === '' ? scale : `${scale}: ${fit}`),
  scaleCoarse: (errorGrams: string | null) =>
    errorGrams === null ? 'too coarse for this' : `too coarse for this, ${sayGrams(errorGrams)} either way`,
  scaleUnfit: {
    held: () => 'did not pass its check',
    'too-small': (holdsGrams: string) => `holds ${sayGrams(holdsGrams)} at most`,
  },
  lastTare: (grams: string) => `Vessel as last time: ${sayGrams(grams)}`,

  worst: (ratio: string) =>
    `Even if the scale is out by its most, it stays at ${ratio} of the tightest limit.`,
  worstOver: (ratio: string) =>
    `If the scale is out by its most, it may reach ${ratio} of the tightest limit.`,
  worstWorking: 'Show the working',
  worstEquation: '(on the scale + its worst error) ÷ (what the formula asks × what the limit allows of it)',
  worstFigures: (grams: string, error: string, exact: string, times: string) =>
    `(${sayGrams(grams)} + ${sayGrams(error)}) ÷ (${sayGrams(exact)} × ${sayDecimal(times)})`,
  worstNote:
    'The tightest of law, trade standard, supplier and report. With every other weighing as planned; once all is in, the batch is judged with all errors at once.',
} as const;

const scaleUnits: Readonly<Record<string, string>> = {
  kg: 'kilograms',
  oz: 'ounces',
  lb: 'pounds',
  ozt: 'troy ounces',
  ct: 'carats',
  grain: 'grains',
  mg: 'milligrams',
};

/** Making without a recipe: what the hands know is weighed, and written down by the tool. */
export const handWords = {
  start: 'Make it once, by hand',
  startAgain: 'Make it again by hand',
  title: 'Making by hand',
  soft: 'Weigh as you always do and name each thing: the formula is written from it, as a trial.',
  what: 'What goes in next?',
  find: 'Name, or a part of it',
  lot: (item: string, lot: string, onHand: string) => `${item} \u00b7 lot ${lot} \u00b7 ${onHand}`,
  newThing: (name: string) => `“${name}” is new: weigh it in`,
  newThingSoft: 'It joins the materials with as much as you weigh; its papers can follow.',
  weigh: (item: string) => `How much ${item}?`,
  done: 'In it goes',
  other: 'Something else',
  scale: 'On which scale',
  anyScale: 'another scale',
  soFar: 'In so far',
  soFarLine: (item: string, grams: string, percent: string) => `${item}: ${sayGrams(grams)}, ${percent} %`,
  sum: (grams: string) => `${sayGrams(grams)} in all`,
  step: 'A step in between',
  stepTitle: 'What is done now?',
  stepKind: { melt: 'Melt', hold: 'Hold warm', cool: 'Cool', mix: 'Stir', whip: 'Whip', set: 'Let it set' },
  stepWhat: 'In your words',
  stepTap: 'Done',
  celsius: 'Temperature',
  minutes: 'Minutes',
  finish: 'That was all',
  finishTitle: 'What came out, and what is it called?',
  name: 'Name',
  nameHint: 'May follow later, on the formula’s page.',
  writeToo: (name: string) => `Write “${name}” down as a new formula too`,
  yieldGrams: 'Came out (net)',
  finishTap: 'It is made: write the formula',
  goesInto: 'What is it?',
  kind: { mixture: 'Goes into tins', base: 'A base, kept for others' },

  wandering: 'What wanders from making to making',
  wanderingNone: (made: number) =>
    `Made ${made === 1 ? 'once' : `${sayDecimal(made)} times`} so far: after three makings it is shown which line wanders.`,
  wanderingSays: (item: string, used: string, bound: string) =>
    `${item} wanders the most for its room: ${used} % of the way to ${bound}.`,
  wanderingOver: (item: string, bound: string) =>
    `${item} has no room left to ${bound}, and a making went beyond it.`,
  wanderingFor: (markets: string) => `The room is that of the strictest market it is for: ${markets}.`,
  wanderingStill: 'No line wanders further than its band.',
  bound: { limit: 'its limit', report: 'the report’s range', band: 'the edge of its band' },
  line: 'Line',
  mean: 'Mean',
  spread: 'Spread',
  range: 'From, to',
  room: 'Room',
  used: 'Used of it',
  percent: (value: string) => `${sayDecimal(value)} %`,
  fromTo: (low: string, high: string) => `${sayDecimal(low)} to ${sayDecimal(high)} %`,
  picture: (item: string, least: string, most: string, low: string, high: string) =>
    `${item}: made between ${least} and ${most} %; room from ${low} to ${high} %`,
} as const;
