import { briefGrams } from '../brief-grams.ts';
import { sayDecimal, sayGrams } from '../say-figure.ts';

const pieces = (count: number, one: string, many: string): string =>
  count === 1 ? `one ${one}` : `${sayDecimal(count)} ${many}`;

/** What is taken off, and how: the three ways in which tins are weighed. */
export const wayWords = {
  title: 'How are the tins weighed?',
  names: {
    mean: 'Gross, less the mean of empty tins',
    own: 'Each tin empty first, then full',
    net: 'Net: the scale is set to nought with the tin on it',
  },
  short: { mean: 'less the mean of empty tins', own: 'less its own tare', net: 'net' },
  hints: {
    mean: 'One tap a tin. How much empty tins differ is counted against you: ten of them are weighed first.',
    own: 'Two taps a tin, and no tin’s weight is guessed. For tins that differ.',
    net: 'One tap a tin. Set the scale to nought with each empty tin.',
  },
  change: 'Weigh in another way',
  changeTitle: 'Weigh in another way from now on',
  changeSays: 'Each tin so far keeps how it was weighed.',
  take: 'Weigh like this from now on',
  now: (how: string) => `Weighed ${how}`,
} as const;

/** Ten empty tins, one after another. */
export const tareWords = {
  title: 'Ten empty tins',
  says: 'Put on one empty tin after another, as they come to hand, with the lid if it is weighed along later.',
  field: 'Empty tin on the scale',
  list: 'Empty tins',
  keep: 'Keep this empty tin',
  keepOdd: 'It is so: keep this empty tin',
  takeOut: (number: number, grams: string) => `Take empty tin ${number} out: ${sayGrams(grams)}`,
  number: (number: number) => `Empty tin ${number}`,
  of: (count: number) => `${pieces(count, 'empty tin', 'empty tins')} weighed`,
  found: (mean: string, spread: string, allowance: string) =>
    `Mean ${sayGrams(mean)}, spread ${sayGrams(spread)}. A tin may be ${sayGrams(allowance)} heavier than the mean: that much is counted against each tin.`,
  wide: (quarter: string) =>
    `These tins differ by more than a quarter of the tolerable error (${sayGrams(quarter)}): weigh each one empty first. Rule of OIML R 87, from memory, check.`,
  odd: (numbers: string, isOne: boolean) =>
    `${isOne ? `Tin ${numbers} is` : `Tins ${numbers} are`} a tenth or more off the middle one: another kind of tin, or misread?`,
  more: (count: number) => `${sayDecimal(count)} more make ten.`,
  orKnown: 'Or one weight for all',
  known: (grams: string) =>
    `Left empty, ${sayGrams(grams)} is taken off, which is what this tin is known to weigh.`,
  notKnown: 'Nobody has weighed this tin yet.',
  spreadUnknown: 'How much these tins differ is not known: weigh ten empty ones, and it is counted.',
} as const;

/** Before the first tin. */
export const readyWords = {
  title: 'Before the first tin',
  areaTitle: 'Is the bench clear?',
  areaSays: 'No tins, labels or butter of an earlier product on it, or near enough to be mixed up.',
  areaClear: 'It is clear',
  areaNot: 'It is not clear, and I fill all the same',
  areaWhy: 'Why it is filled all the same',
  areaSend: 'Fill all the same',
  containersTitle: 'How were the tins cleaned?',
  remark: 'How',
  send: 'Keep it',
  issuedTitle: 'Counted out',
  issuedSays:
    'As many as lie on the bench now. What is left goes back, and is counted when the run is closed.',
  tins: 'Tins',
  lids: 'Lids',
  labels: 'Labels',
  issuedSend: 'That is what lies here',
  later: 'Say it later',
  saidArea: (isClear: boolean, by: string) =>
    isClear ? `The bench is clear (${by}).` : `The bench was not clear (${by}).`,
  saidContainers: (how: string, by: string) => `Tins ${how} (${by}).`,
  saidIssued: (what: string, by: string) => `Counted out: ${what} (${by}).`,
  parts: {
    tin: (count: number) => pieces(count, 'tin', 'tins'),
    lid: (count: number) => pieces(count, 'lid', 'lids'),
    label: (count: number) => pieces(count, 'label', 'labels'),
  },
  notYet: '(not said yet)',
  again: 'Say it anew',
  sayNow: 'Say it now',
  onPaper: {
    area: (isClear: boolean, reason: string) =>
      isClear ? 'Bench clear of earlier products' : `Bench not clear: ${reason}`,
    containers: (how: string) => `Containers ${how}`,
    issued: (what: string) => `Counted out: ${what}`,
  },
} as const;

/** A tin that is too light, what became of it, and questions about a reading. */
export const lightWords = {
  add: (grams: string) => `Add ${sayGrams(grams)}`,
  spare: (grams: string) => `${sayGrams(grams)} may come out again`,
  lightBy: (grams: string) => `too light by ${sayGrams(grams)}`,
  inside: 'right',
  heavy: (grams: string) => `heavy by ${sayGrams(grams)}`,
  emptyOf: (number: number) => `Tin ${number}, empty`,
  fullOf: (number: number) => `Grams on the scale, tin ${number}`,
  keepEmpty: 'Now fill it',
  again: (number: number) => `Tin ${number} again, filled up`,
  againLess: (number: number) => `Tin ${number} again, something taken out`,
  takenOut: 'Something taken out: weigh it again',
  takenOutOf: (number: number) => `Something is taken out of tin ${number}: weigh it again`,
  refill: 'Filled up: weigh it again',
  refillOf: (number: number) => `Tin ${number} is filled up: weigh it again`,
  notAgain: 'No, the next tin',
  aside: 'Put it aside',
  asideOf: (number: number) => `Put tin ${number} aside`,
  fateTitle: (number: number) => `What becomes of tin ${number}?`,
  fates: {
    bowl: 'Back into the bowl',
    trial: 'Kept to be tried',
    binned: 'Thrown away',
    slip: 'The weight was wrong, not the tin',
  },
  fateWas: {
    bowl: 'back into the bowl',
    trial: 'kept to be tried',
    binned: 'thrown away',
    slip: 'a slip',
  },
  askTitle: 'Is that right?',
  sure: 'It is so: keep this tin',
  sureEmpty: 'It is so: fill it',
  wasTared: 'It was at nought with the tin on it',
  weighAgain: 'Read the scale again',
  filledUp: 'filled up since',
  wasAsked: 'asked, and confirmed',
} as const;

/** What to aim at, and what it gives away. */
export const aimWords = {
  title: 'What to aim at',
  says: (aim: string) => `Aim at ${sayGrams(aim)} net`,
  decidedBy: {
    scale:
      'The label, and what the scale and the tins may be off. No spread is learnt yet: two runs tell it.',
    coverage: 'So that 39 tins in 40 are right at once; the other one is filled up on the scale.',
    nominal: 'By the average way the mean must reach the label; your spread asks for no more.',
    'limit-1': 'By the average way: so that few tins fall below T1, for your spread.',
    'limit-2': 'By the average way: so that hardly any tin falls below T2, for your spread.',
  },
  giveaway: (grams: string, money: string | null) =>
    `${sayGrams(grams)} above the label in each tin${money === null ? '' : `, ${money}`}`,
  run: (grams: string, money: string | null, tins: number) =>
    `${sayGrams(grams)}${money === null ? '' : `, ${money}`} in ${pieces(tins, 'tin', 'tins')}`,
  noPrice: 'What it costs is not known: a price behind the bowl is missing.',
  lower: (by: string, saves: string, money: string | null, oneIn: number | null) =>
    `Aiming ${sayGrams(by)} lower would save ${sayGrams(saves)}${money === null ? '' : ` (${money})`} and leave ${
      oneIn === null
        ? 'hardly any tin short'
        : oneIn === 1
          ? 'nearly every tin short'
          : `one tin in ${sayDecimal(oneIn)} short`
    }.`,
  learnt: (spread: string, tins: number, runs: number) =>
    `Spread ${sayGrams(spread)}, learnt from ${sayDecimal(tins)} tins of ${pieces(runs, 'run', 'runs')}:`,
  from: { product: 'of this product', container: 'of other products in the same tin' },
  product: (grams: string) => `The product itself says ${sayGrams(grams)}, and that is taken.`,
  own: 'Aim at something else',
  field: 'Aim, net',
  fieldHint: (grams: string) => `Left empty, ${sayGrams(grams)}.`,
  errors: (grams: string) => `Scale and tin may be off by ${sayGrams(briefGrams(grams))} at most.`,
} as const;

/** The picture of the weights, and the table beside it. */
export const chartWords = {
  title: 'The weights as they came',
  label: 'Label',
  aim: 'Aim',
  limit1: 'T1',
  limit2: 'T2',
  centre: 'Mean',
  upper: 'Upper',
  lower: 'Lower',
  farBelow: (what: string, grams: string) => `${what}, ${grams}, lies below the picture.`,
  notYet: (more: number) => `Control limits come with ${pieces(more, 'more tin', 'more tins')}.`,
  says: (count: number, outside: number | null) =>
    outside === null
      ? `${pieces(count, 'tin', 'tins')} drawn.`
      : `${pieces(count, 'tin', 'tins')} drawn; ${outside === 0 ? 'none' : sayDecimal(outside)} outside the control limits.`,
  print: 'Print the weights',
  wandered: (numbers: string, isOne: boolean) =>
    `${isOne ? `Tin ${numbers} lies` : `Tins ${numbers} lie`} outside the control limits: look what changed there.`,
} as const;

/** What the first tins say of the air in what was whipped. */
export const tinsAirWords = {
  title: 'Air in these tins',
  verdicts: {
    more: 'It goes in, with room for more air',
    stop: 'It goes in, and is full: no more air',
    'too-much': 'Too much air',
  },
  unknown: 'Whether there is too much air is not known: no cup of this bowl was weighed.',
  hasRoom: 'It goes in with room to spare: not too much air.',
  by: {
    tins: (takes: string, declared: string) =>
      `A full tin of this bowl holds ${takes}; its label states ${declared}.`,
    cups: (takes: string, declared: string) =>
      `By the cups of this bowl a tin takes ${takes}; its label states ${declared}.`,
  },
  ask: (number: number) => `Is tin ${number} full, with only the room under its lid left?`,
  full: 'It is full: no more goes in',
  room: 'There is room',
  said: 'Ask that again',
  fills: (count: number, mean: string, left: string, sample: string | null) =>
    `At ${mean} a tin the bowl fills ${
      count === 0 ? 'no more' : `${sayDecimal(count)} more`
    }${sample === null ? '' : ` once the sample of ${sample} is kept`}, ${left} left over.`,
  notEnough: (short: number) =>
    `Of those wanted ${pieces(short, 'tin', 'tins')} ${short === 1 ? 'stays' : 'stay'} empty.`,
  chance: (percent: string, tins: number) =>
    tins === 1
      ? `Chance that the tin still to fill reaches its label at once: ${percent} %.`
      : `Chance that all ${sayDecimal(tins)} still to fill reach the label at once: ${percent} %.`,
  chanceUnknown: 'The chance that all reach the label comes with the second tin.',
  least: (grams: string, withError: boolean) =>
    withError
      ? `What a tin must reach: ${grams}, the label and the error of this way of weighing.`
      : `What a tin must reach: ${grams}, the label.`,
  mean: (grams: string, count: number) =>
    `Expected in a tin: ${grams}, the mean of ${pieces(count, 'tin', 'tins')} so far.`,
  bowl: 'Left in the bowl, less the sample that is still to be kept and what stays behind as the product says.',
  rule: 'A tin takes brim volume less the room under the lid, times density. It is full where it takes no more than 5 % above its aim (common practice, no source).',
  fromNow: (tins: number) => pieces(tins, 'tin of this run', 'tins of this run'),
  mendsNow: 'Air cannot be whipped out again. What helps, in this order, before the next tin is filled:',
} as const;

/** Several kinds of tin from one bowl. */
export const otherWords = {
  title: 'From the same bowl',
  here: 'filling now',
  left: (grams: string) => `${sayGrams(grams)} left in the bowl`,
  filled: (filled: number, wanted: number) => `${sayDecimal(filled)} of ${pieces(wanted, 'tin', 'tins')}`,
  holds: (count: number) => (count === 0 ? 'no more fit' : `the bowl fills ${sayDecimal(count)} more`),
  begin: 'Begin',
  goOn: 'Go there',
  states: {
    planned: 'planned',
    filling: 'being filled',
    closed: 'closed',
    released: 'released',
    rejected: 'rejected',
  },
} as const;

/** Closing: counted back, what went to the shelf, what stayed behind. */
export const closeWords = {
  aside: (count: number) =>
    `${count === 1 ? 'One tin was' : `${sayDecimal(count)} tins were`} put aside: counted as spoilt here; correct it where one was saved.`,
  backTins: 'Tins that go back',
  backLids: 'Lids that go back',
  backLabels: 'Labels that go back',
  of: (issued: number) => `Of ${sayDecimal(issued)} counted out. Left empty, it is not counted.`,
  leftShould: (grams: string) =>
    `By the book ${sayGrams(grams)} are in the bowl: weigh what is left, or put nought where it is thrown away.`,
  sure: 'It is so: close the run',
  notYet: 'Not yet',
  leftHint: 'It goes back to the shelf as a lot of its own and can be filled later.',
  part: 'What',
  issued: 'Counted out',
  used: 'Used',
  spoilt: 'Spoilt',
  back: 'Goes back',
  missing: (count: number) => (count === 0 ? 'adds up' : `${sayDecimal(count)} not accounted for`),
  counted: 'Counted pieces',
  sampleKept: (run: string) => `The sample of this batch was kept with ${run}.`,
  leftOnShelf: (grams: string, lot: string) => `${sayGrams(grams)} went back to the shelf as ${lot}`,
  leftUntil: (day: string) => `best before ${day}`,
  fillLeft: 'Fill it',
  lossTitle: 'What stayed behind',
} as const;
