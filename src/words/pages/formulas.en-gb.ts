import { sayDecimal } from '../say-figure.ts';

const listOf = new Intl.ListFormat('en-GB', { type: 'conjunction' });

/** Formulas, their check, and the assessor's reports. */
export const formulaWords = {
  title: 'Formulas',
  says: (bases: number, mixtures: number) =>
    `${bases === 1 ? 'One base' : `${sayDecimal(bases)} bases`} and ${mixtures === 1 ? 'one mixture' : `${sayDecimal(mixtures)} mixtures`} written down.`,
  saysNone: 'No formula is written down yet.',
  soft: 'Type a recipe in grams as you make it; the percents follow by themselves.',
  write: 'Write a formula down',
  reports: "The assessor's reports",
  products: 'Products',
  bases: 'Bases',
  mixtures: 'Mixtures',
  noBase: 'No base yet. A base is made ahead, sets, and serves several scents.',
  noMixture: 'No mixture yet. A mixture is what a tin is filled from.',
  revision: (number: number) => `Revision ${number}`,
  noRevision: 'nothing written yet',
  standing: { trial: 'trial', 'for-sale': 'meant for sale' },
  fixed: 'used by a batch or decided on: a change makes the next revision',
  kind: { base: 'base', mixture: 'mixture' },
  name: 'Name',
  code: 'Letters of its batch numbers',
  codeHint: 'Two to four capitals, such as OC: its batches are then OC-0001, OC-0002.',
  kindTitle: 'What is it?',
  kindBase: 'A base: made ahead, kept, shared by several scents',
  kindMixture: 'A mixture: what a tin is filled from',
  change: 'Change the recipe',
  firstLine: 'Write the recipe down',
  check: 'Check it',
  makeIt: 'Make a batch',
  item: 'What goes in',
  grams: 'Grams',
  percent: 'Percent',
  stage: 'Stage',
  stageHint: 'What is weighed and worked together, such as Melt, Cool, Whip.',
  total: 'Together',
  addLine: 'Add a line',
  newMaterial: 'Enter a new material',
  liveTitle: 'What the check says so far',
  liveNone: 'Type what goes in and how much: the check answers here at every key.',
  liveWhole: 'The whole check, with what is open, follows once it is saved.',
  fromTry: 'With the amounts that were tried out; nothing is kept until you save.',
  noMaterial: 'No material is entered yet: enter the first one here; its papers can follow.',
  addStep: 'Add a step',
  lineOf: (number: number) => `Line ${number}`,
  stepOf: (number: number) => `Step ${number}`,
  takeOutLine: (number: number) => `Take out line ${number}`,
  takeOutStep: (number: number) => `Take out step ${number}`,
  stepsTitle: 'Steps, in the order of making',
  linesTitle: 'What goes in, in grams as you make it',
  stepKind: 'What kind of step',
  stepKinds: {
    melt: 'melt',
    hold: 'hold warm',
    cool: 'cool',
    mix: 'mix',
    cover: 'cover',
    set: 'let set',
    whip: 'whip',
    weigh: 'weigh',
    cup: 'cup test: weigh a full cup',
    other: 'other',
  },
  stepWhat: 'What to do',
  from: 'From',
  to: 'To',
  minutes: 'Minutes',
  roundMinutes: 'Minutes of a round',
  roundMinutesHint: 'After each the machine stands, and somebody looks.',
  rounds: 'Rounds, usually',
  growsPercent: 'Grows by, as you expect',
  growsPercentHint: '100: it doubles in volume. Cups of earlier batches count before this.',
  leastHours: 'Firm after, at the earliest',
  mostHours: 'Firm after, at the latest',
  caution: 'Caution',
  use: 'How it is used',
  uses: { 'leave-on': 'stays on the skin', 'rinse-off': 'is washed off' },
  category: 'IFRA category',
  categoryHint: '5A is body creams, butters and balms; 5B face; 5C hands; 1 lips; 9 rinsed off.',
  bodyPart: 'Where on the body',
  productType: 'What sort of product, as the law lists it',
  otherUsesTitle: 'Also used on: it is judged for each, and the tightest decides',
  otherUses: {
    body: 'the body',
    face: 'the face',
    hands: 'the hands',
    lips: 'the lips',
    babies: 'babies',
    bath: 'the bath, rinsed off',
  },
  minAge: 'Made for people from how many months of age',
  minAgeHint: 'Empty: for adults.',
  standingTitle: 'What it may become',
  standings: { trial: 'Only trials, never sold', 'for-sale': 'For sale, where the check allows it' },
  settingLeast: 'Firm after, at the earliest',
  settingMost: 'Firm after, at the latest',
  keepMonths: 'Kept for so many months, then looked at again',
  note: 'Note',
  judged: 'How it is used and judged',
  hours: 'h',
  months: 'months',
  changeTitle: (name: string) => `Recipe of ${name}`,
  saved: (number: number) => `Saved as revision ${number}.`,
  hotFat: 'Hot fat burns. Never leave it, never add water to it, and keep a lid at hand.',
};

export const checkWords = {
  title: (name: string) => `Check: ${name}`,
  soft: (number: number) =>
    `Revision ${number}. Judged on the most that each material may hold. The assessor decides; this page prepares.`,
  asTyped:
    'As typed, not saved. Judged on the most that each material may hold. The assessor decides; this page prepares.',
  tryTitle: 'Try other amounts',
  trySoft: 'The answer follows at every key. Nothing is kept until the recipe is changed.',
  tryKeep: 'Change the recipe so',
  tryBack: 'Back to what is written',
  market: { GB: 'Great Britain', NI: 'Northern Ireland', EU: 'European Union', US: 'United States' },
  judgedFor: (products: readonly string[]) =>
    products.length === 0
      ? 'No product is filled from it yet, so it is judged for Great Britain, Northern Ireland and the European Union.'
      : `Judged for where its products are sold: ${products.join(', ')}.`,
  lookAt: 'What follows is of',
  somewhere(
    answer: 'yes' | 'no' | 'decide',
    because: string | null,
    others: number,
    questions: number,
  ): string {
    const asked =
      questions === 1 ? 'one question is decided' : `${sayDecimal(questions)} questions are decided`;
    if (answer === 'yes') return 'yes';
    if (answer === 'decide') return `once ${asked}`;
    const more =
      others === 0
        ? ''
        : ` ${others === 1 ? 'One more thing stands' : `${sayDecimal(others)} more things stand`} against it.`;
    const besides =
      questions === 0
        ? ''
        : ` ${questions === 1 ? 'One question is' : `${sayDecimal(questions)} questions are`} to be decided besides.`;
    return `no. ${because ?? ''}${more}${besides}`;
  },
  notJudged: (names: readonly string[]) =>
    `Not judged: what is typed for ${listOf.format(names)} cannot be used.`,
  notJudgedMore: 'The answer comes back with the next amount that can be used.',
  judging: 'Judging what is typed …',
  whereSold: (markets: string) => `where it is sold (${markets})`,
  allMarkets: 'Great Britain, Northern Ireland and EU',
  enterReport: 'Enter the report',
  toReports: 'To the reports',
  limits: 'Limits, the closest first',
  legend: 'Dark: what is typical. Hatched: up to the most that may be in it, which decides.',
  noFigure: (count: number) =>
    count === 1
      ? 'One more rule gives no limit to measure by.'
      : `${sayDecimal(count)} more rules give no limit to measure by.`,
  noLimits: 'Nothing in it has a limit in the tables.',
  substance: 'Substance',
  share: 'Share of its limit',
  decidedBy: 'Decided by',
  percentFrom: (typical: string, most: string, from: string) =>
    typical === most ? `${most} % from ${from}` : `${most} % at the most, ${typical} % typical, from ${from}`,
  shareOfLimit: (share: string) => `${share} % of what it may be`,
  ofLimit: (share: string, limit: string) => `${share} % of ${limit} %`,
  kinds: {
    law: 'law',
    ifra: "IFRA, the trade's standard",
    supplier: "the supplier's certificate",
    assessor: "the assessor's report",
  },
  ruleBy: {
    law: 'by law',
    ifra: 'by IFRA',
    supplier: 'by its supplier',
    assessor: 'by the report',
  },
  oneRuleOf: (whose: string, rules: number) =>
    `(${whose}; each of its ${sayDecimal(rules)} rules has a line)`,
  certificate: 'certificate of the lot',
  noLimitHere: 'no limit for this use',
  entry: (entry: string) => `entry ${entry}`,
  edition: (edition: string) => `edition ${edition}`,
  verdicts: {
    within: 'within',
    over: 'over the limit',
    prohibited: 'prohibited',
    unknown: 'not known',
    'no-rule': 'no rule in the tables',
  },
  noRule: (count: number, isMore: boolean) =>
    `${count === 1 ? 'One' : sayDecimal(count)} ${isMore ? 'more ' : ''}${count === 1 ? 'substance has' : 'substances have'} no rule in the tables.`,
  noRuleTitle: 'No rule in the tables',
  farBelow: (count: number) =>
    count === 1
      ? 'One substance lies below a tenth of its limit.'
      : `${sayDecimal(count)} lie below a tenth of their limits.`,
  phototoxic: (market: string, share: string) =>
    `Phototoxic oils together, ${market}: their shares of their own limits add up to ${share}; 1 is the most (IFRA).`,
  onLabel: 'On the label',
  names: (list: string) =>
    list === ''
      ? 'no fragrance allergen needs to be named (the ingredient list is always there).'
      : `the ingredient list, and in it by name: ${list}.`,
  report: "The assessor's report",
  noReport: 'No report covers this formula, use and market.',
  reportLine: (reference: string, day: string) => `${reference}, to be reviewed by ${day}`,
  reportPast: 'past its review date',
  reportVerdicts: { within: 'within', over: 'over', under: 'under', 'not-covered': 'not covered' },
  range: (least: string | null, most: string | null) =>
    most === null ? 'not in the report' : `${least ?? '0'} to ${most} %`,
  sum: {
    refused: 'Decided against:',
    open: (count: number) =>
      count === 1
        ? 'To be decided once, with a reason:'
        : `${sayDecimal(count)} things to be decided once, each with a reason:`,
    accepted: (count: number, isMore: boolean, by: readonly string[]) =>
      `${count === 1 ? 'One' : sayDecimal(count)} ${isMore ? 'more ' : ''}${count === 1 ? 'question' : 'questions'}, ${count === 1 ? '' : 'all '}accepted by ${listOf.format(by)}.`,
  },
  open: 'Questions that no table answers',
  noneOpen: 'Nothing is open.',
  water: 'Water and microbes',
  waterSaid:
    'Read off the names of its materials and its use. Whether water can come in while it is used is said in the product file; the assessor decides.',
  ofLots: 'Open with lots that have a certificate',
  ofLotsSays:
    'Only the certificate of a lot raises these. A batch with such a lot waits until each is decided here; a decision holds for every lot with the same figures.',
  ofLot: (material: string, lots: string) => `${material}, lot ${lots}`,
  decide: 'Decide',
  whatWasDecided: 'Why it was asked, and what was decided',
  decideTitle: (substance: string) => `Decide: ${substance}`,
  change: 'Change or take back',
  changeTitle: (substance: string) => `Change or take back: ${substance}`,
  soFar: 'So far:',
  changeSays:
    'What you decide now counts from now on, in your name, with your reason. The earlier decision stays readable.',
  takeBack: 'Take it back: the question is open again',
  earlier: (count: number) =>
    count === 1 ? 'One earlier decision' : `${sayDecimal(count)} earlier decisions`,
  decideSays: 'Once for this revision, in your name, with your reason. It stays in the record.',
  accept: (substance: string) => `${substance} may be in it`,
  refuse: (substance: string) => `${substance} may not be in it`,
  reason: 'Why',
  reasonHint: 'For instance what the certificate, the assessor or the law says.',
  decided: (verdict: string, by: string) =>
    verdict === 'accepted' ? `accepted by ${by}` : `refused by ${by}`,
  fromMemory: 'from memory, check',
  advice: 'Not legal or medical advice: local law and the qualified assessor decide.',
};

export const reportWords = {
  title: "The assessor's reports",
  outweighed: (by: string, formula: string, markets: string) =>
    `${by} was signed later, and counts instead of it for ${formula} in ${markets}.`,
  says: (count: number) =>
    count === 1 ? 'One report is entered.' : `${sayDecimal(count)} reports are entered.`,
  saysNone: 'No report is entered yet: nothing can be made for sale without one.',
  soft: "What the qualified assessor's safety report covers, as it is written there. Gramwright prepares and keeps; it does not assess.",
  add: 'Enter a report',
  change: 'Change',
  empty: 'No report yet.',
  reference: 'Reference',
  assessor: 'Assessor',
  signedOn: 'Signed on',
  reviewBy: 'To be reviewed by',
  base: 'The base it covers',
  noBase: 'none: it covers mixtures without a base',
  formulas: 'Mixtures it covers',
  products: 'Products it names; none: every product filled from what it covers',
  markets: 'Markets',
  uses: 'Uses',
  ranges: 'Materials and how much of them, in percent of the finished product',
  material: 'Material',
  least: 'At the least',
  most: 'At the most',
  addRange: 'Add a material',
  /** Of the finished product, as the covered recipes are written down. */
  today: (least: string, most: string) =>
    least === most ? `today ${sayDecimal(least)} %` : `today ${sayDecimal(least)} to ${sayDecimal(most)} %`,
  notInIt: 'not in what it covers',
  takeOut: (number: number) => `Take out material ${number}`,
  rangeOf: (number: number) => `Material ${number}`,
  past: 'past its review date',
  valid: 'in force',
  close: 'to be reviewed soon',
  file: 'PDF',
  attach: 'Attach the PDF',
  openFile: 'Open the PDF',
  noFile: 'no PDF attached',
  reviewLine: (day: string) => `review by ${day}`,
};
