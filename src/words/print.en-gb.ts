import { sayDecimal } from './say-figure.ts';

/** Words on labels and on the workshop's papers. The headings of the law are in the law's own words. */

/** What whipping and setting are told by besides. */
interface StepMore {
  readonly roundMinutes?: string | null;
  readonly rounds?: number | null;
  readonly leastHours?: string | null;
  readonly mostHours?: string | null;
}

const counted = (count: number, one: string, many: string): string =>
  `${sayDecimal(count)} ${count === 1 ? one : many}`;

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

export const printWords = {
  label: {
    openJar: (months: number) => `Open jar: ${counted(months, 'month', 'months')} after opening`,
    sheet: {
      title: (product: string, batch: string) => `${product}, batch ${batch}`,
      copies: (copies: number) => `${counted(copies, 'copy', 'copies')} of each. Cut on the thin line.`,
      rulerIs: 'This bar is 50 mm long.',
      printAt: 'Print at 100 %, not fitted to the page.',
      ifNot: 'If the bar measures anything else, the labels are the wrong size.',
    },
  },
  paper: {
    page: (number: number, total: number) => `Page ${number} of ${total}`,
    continued: (title: string) => `${title}, continued`,
    nothing: 'Nothing in this list.',
    notPlanned: 'not planned yet',
    day: (year: number, month: number, day: number) => `${day} ${MONTHS[month - 1]} ${year}`,
    month: (year: number, month: number) => `${MONTHS[month - 1]} ${year}`,
    footer: (workshop: string, what: string) => `${workshop} · ${what}`,
  },
  /** Papers that are pages too: product file, worksheet, what changed since a report. */
  written: {
    asOf: 'Data as of',
    missing: 'What is missing',
    files: 'Files under this heading',
    notice:
      'Prepared by the workshop for the qualified assessor. It is no assessment and replaces none; figures from memory are marked and have to be checked.',
    footer: (title: string) => `${title} · no assessment`,
    indexTitle: (what: string) => `What is in this folder: ${what}`,
    indexAsOf: (moment: string) => `Data as of ${moment}`,
    indexMissing: (count: number) =>
      count === 0
        ? 'Nothing is missing that the tool can see.'
        : `${counted(count, 'thing is', 'things are')} missing: the PDF opens with the list.`,
    names: {
      file: 'product-information-file',
      pdf: 'product-information-file.pdf',
      data: 'data.json',
      index: 'index.txt',
      headings: 'by-heading',
      report: 'assessors-report',
      records: 'batch-records',
      labels: 'labels',
      materials: 'materials',
      worksheet: 'worksheet',
      worksheetPdf: 'worksheet.pdf',
      changes: 'changes-since-report',
    },
    label: {
      examples: 'As its labels are designed, by the formula in force; batch and date are examples.',
      lacks: (what: string) => `Missing: ${what}`,
      elements: 'What must stand on it',
    },
    material: {
      inci: 'Label name (INCI)',
      cas: 'CAS',
      supplier: 'Supplier',
      paper: 'Paper that lists what is in it',
      certificate: (lot: string, reference: string, dated: string | null) =>
        `Certificate of lot ${lot}: ${reference}${dated === null ? '' : `, ${dated}`}`,
      range: (least: string, most: string, typical: string) =>
        `${least} to ${most} %, typically ${typical} %`,
      supplierMost: 'The most that the supplier allows in the finished product',
      missing: 'not entered',
    },
  },
  weighingSheet: {
    titleOf: (batch: string) => `Weighing sheet ${batch}`,
    trial: 'Trial batch. Never for sale.',
    batch: 'Batch',
    revision: 'Formula revision',
    purpose: 'Made for',
    purposes: { sale: 'sale', trial: 'trial only' },
    makeOn: 'To be made on',
    size: 'Batch size',
    grams: (grams: string) => `${grams} g`,
    columns: {
      material: 'Material',
      lot: 'Lot',
      target: 'Weigh out (g)',
      tolerance: '±\u00a0%',
      scale: 'Scale',
      actual: 'Weighed (g)',
      initials: 'Initials',
    },
    method: 'Method',
    steps: { number: '', step: 'Step', seen: 'Seen, and when', initials: 'Initials' },
    differently: 'Anything done differently, and why:',
    correct:
      'Write in permanent ink. Strike a wrong entry once so that it can still be read; add initials and the reason.',
    signatures: ['Scale check: known mass and reading', 'Weighed by, date', 'Checked by, date'],
  },
  batchRecord: {
    titleOf: (batch: string) => `Batch record ${batch}`,
    abandoned: (reason: string) => `Given up, and nothing was made of it: ${reason}`,
    started: 'Begun',
    ended: { made: 'Made', abandoned: 'Given up' },
    planned: 'Planned',
    input: 'Weighed in',
    yield: 'Yield',
    loss: 'Lost',
    /** What was wanted of the yield, in the trade's words: actual over what went in. */
    yieldOf: (grams: string, percent: string) => `${grams} g, ${percent} % of what went in`,
    by: (when: string, who: string) => `${when}, ${who}`,
    columns: {
      material: 'Material',
      lot: 'Lot',
      target: 'Asked (g)',
      actual: 'Weighed (g)',
      scale: 'Scale',
      when: 'When',
      who: 'Who',
    },
    outside: { low: 'Less than was wanted.', high: 'More than was wanted.' },
    additions: 'Weighed in',
    notWeighed: 'not weighed in',
    struck: 'Struck entries',
    struckColumns: { what: 'What', why: 'Struck because', when: 'When', who: 'Who' },
    struckAddition: (name: string, lot: string, grams: string) => `${name}, lot ${lot}: ${grams} g`,
    struckBy: (why: string, when: string, who: string) => `${why} (struck ${when}, ${who})`,
    method: 'Method',
    stepColumns: { step: 'Step', seen: 'Seen', when: 'When', who: 'Who' },
    notRecorded: 'no record',
    /** `Melt in a water bath (70 to 75 °C, 20 min)`. */
    stepText: (
      what: string,
      least: string | null,
      most: string | null,
      minutes: string | null,
      more: StepMore = {},
    ) => {
      const heat = [least, most].filter((celsius) => celsius !== null).join(' to ');
      const hours = [more.leastHours, more.mostHours].filter((each) => each).join(' to ');
      const rounds = more.rounds ? `${sayDecimal(more.rounds)} rounds` : 'rounds';
      const facts = [
        heat && `${heat} °C`,
        minutes && `${minutes} min`,
        more.roundMinutes && `${rounds} of ${more.roundMinutes} min, each looked at`,
        hours && `firm after ${hours} h`,
      ]
        .filter(Boolean)
        .join(', ');
      return facts === '' ? what : `${what} (${facts})`;
    },
    nothingEntered: 'nothing entered',
    seen: (
      celsius: string | null,
      minutes: string | null,
      weighed: { readonly netGrams: string; readonly cup: string | null } | null,
      remark: string,
    ) =>
      [
        celsius && `${celsius} °C`,
        minutes && `${minutes} min`,
        weighed && `${weighed.netGrams} g`,
        weighed?.cup,
        remark,
      ]
        .filter(Boolean)
        .join(', '),
    cup: (density: string, overrun: string | null) =>
      overrun === null ? `${density} g/ml` : `${density} g/ml, overrun ${overrun} %`,
    deviations: 'Done differently',
    deviationColumns: { what: 'What', why: 'Why', when: 'When', who: 'Who' },
    runs: 'Filled into',
    runColumns: { number: 'Batch number', product: 'Product', state: 'State', ready: 'Before the first tin' },
    runStates: {
      filling: 'being filled',
      closed: 'waits for release',
      released: 'released',
      rejected: 'rejected',
    },
    signatures: ['Record looked through by, date'],
  },
  pickList: {
    titleOf: (order: string) => `Pick list for order ${order}`,
    order: 'Order',
    sendBy: 'Send by',
    units: 'Units in all',
    columns: {
      product: 'Product',
      units: 'Units',
      batch: 'Batch',
      place: 'Place',
      bestBefore: 'Best before',
      picked: 'Picked',
    },
    signatures: ['Picked by, date', 'Checked by, date'],
  },
  packingSlip: {
    title: 'Packing slip',
    titleOf: (order: string) => `Packing slip for order ${order}`,
    from: 'From',
    to: 'To',
    order: 'Order',
    placedOn: 'Order taken on',
    drawnUpOn: 'Slip drawn up on',
    sentOn: 'Sent on',
    columns: {
      product: 'Product',
      content: 'Content',
      units: 'Units',
      batch: 'Batch',
      bestBefore: 'Best before',
    },
    total: 'Units in all',
    keep: 'Please keep this slip: with the batch number we can tell what each item was made from.',
  },
  traceReport: {
    titleOf: (lot: string) => `Trace report on lot ${lot}`,
    suspect: 'Suspect lot',
    drawnUpOn: 'Drawn up on',
    shipped: 'Units sent out',
    toBlock: 'Units to block',
    madeFrom: 'Made from it',
    orders: 'Orders that had it',
    stock: 'Still here',
    columns: {
      lot: 'Lot',
      what: 'What it is',
      made: 'Made on',
      state: 'State',
      order: 'Order',
      customer: 'Customer',
      sent: 'Sent on',
      units: 'Units',
      place: 'Place',
    },
    total: 'In all',
    signatures: ['Drawn up by, date', 'Decided by, date'],
  },
} as const;
