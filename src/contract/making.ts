import { z } from 'zod';
import { claim } from './away.ts';
import * as f from './fields.ts';
import { stepKind } from './formulas.ts';
import { shortItem } from './orders.ts';
import { route } from './route.ts';
import { airTin, stageYield, stepAir, stepBegun, stepPhoto, stepWeighed, whipRound } from './steps.ts';

export const purpose = z.enum(['sale', 'trial']);

/** One addition of the weighing sheet: what, of which lot, how much, on which scale, how far off that may be. */
export const sheetRow = z.object({
  position: z.number(),
  stage: z.string(),
  itemKind: z.enum(['material', 'formula']),
  itemId: f.id,
  itemName: z.string(),
  percent: z.string(),
  lotId: f.id.nullable(),
  lotNumber: z.string().nullable(),
  lotNote: f.saying.nullable(),
  /** What the formula asks for, and what the scale can show. */
  exactGrams: z.string(),
  targetGrams: z.string(),
  lowGrams: z.string(),
  highGrams: z.string(),
  scaleId: f.id.nullable(),
  scaleName: z.string().nullable(),
  /** Worst case of the scale against the target, as a fraction of it. */
  relativeError: z.number().nullable(),
  smallestWeightGrams: z.number().nullable(),
  warning: f.saying.nullable(),
  caution: z.string(),
});
export type SheetRow = z.output<typeof sheetRow>;

export const batchSize = z.discriminatedUnion('by', [
  /** Sized from tins: declared content x tins at the aimed fill, bowl loss and retained sample on top. */
  z.strictObject({
    by: z.literal('tins'),
    tins: z
      .array(z.strictObject({ productId: f.id, units: f.piecesAboveZero }))
      .min(1)
      .max(10),
    retained: z.discriminatedUnion('keep', [
      z.strictObject({ keep: z.literal(true), grams: f.gramsAboveZero }),
      z.strictObject({ keep: z.literal(false), reason: f.name }),
    ]),
    /** What stays behind; null: as learnt from earlier batches, else as the products say. */
    lossPercent: f.percent.nullable().default(null),
  }),
  z.strictObject({ by: z.literal('grams'), grams: f.gramsAboveZero }),
]);

export const batchWish = z.strictObject({
  revisionId: f.id,
  purpose,
  markets: z.array(f.market).min(1),
  size: batchSize,
});

/** What the weighings of a plan need of the workshop's scales. */
export const plannedWays = z.object({
  /** Scales that did not pass their check: nothing is planned on them. */
  leftOut: z.array(f.namedThing),
  /** In which every addition is weighed within its tolerance at once; null: in none. */
  smallestBatchGrams: z.string().nullable(),
  /** In none at once: in that one what is larger than its scale holds is weighed in parts. */
  isSmallestInParts: z.boolean(),
  smallestTins: z.array(z.object({ productId: f.id, units: z.number() })),
  /** Additions that no scale weighs well enough at once, too small or too large, and what may be done, the easiest first. */
  small: z.array(
    z.object({
      position: z.number(),
      itemName: z.string(),
      says: f.saying,
      ways: z.array(f.saying),
      /** The lines of a blend made ahead; null: that is no way here. */
      blend: z
        .array(z.object({ itemKind: z.enum(['material', 'formula']), itemId: f.id, grams: z.string() }))
        .nullable(),
    }),
  ),
});

export const batchPlan = z.object({
  revisionId: f.id,
  formulaName: z.string(),
  batchGrams: z.string(),
  /** How the size came about: one line each. */
  sizing: z.array(f.saying),
  /** What bounds it: the order, a material, the base, tins, lids, labels, the bowl. */
  limitedBy: f.saying,
  tins: z.array(
    z.object({ productId: f.id, productName: z.string(), wanted: z.number(), possible: z.number() }),
  ),
  rows: z.array(sheetRow),
  weighing: plannedWays,
  short: z.array(shortItem),
  /** Why it may not start for sale; empty when it may. */
  hindrances: z.array(f.saying),
});

/** Why a reading was asked about, and that it stands as it is; or what was read first, where it was put right. */
const readingAsked = z.strictObject({ kind: z.string().max(40), wasGrams: f.decimal.nullable() });
/** Weighed in a vessel: what the scale showed, and what the vessel weighs empty. */
const vessel = z.strictObject({ grossGrams: f.gramsAboveZero, tareGrams: f.grams });
/** What was asked and answered about one weighing; kept with it. */
export const readingNote = z.object({
  asked: readingAsked.nullable(),
  vessel: vessel.nullable(),
  /** Its lot ran out with it: from here on the line is weighed from this one. */
  restLot: z.object({ id: f.id, number: z.string() }).optional(),
});
export type ReadingNote = z.output<typeof readingNote>;

/** One weighing that was entered at a position; of a position that is done: its last one, with the sum of all. */
const weighedIn = z.object({
  entryId: f.id,
  lotId: f.id,
  lotNumber: z.string(),
  /** What was left to weigh when it was weighed, whatever became of the batch since. */
  askedGrams: z.string(),
  actualGrams: z.string(),
  at: f.instant,
  by: z.string(),
  /** Where the sum up to here lies; a part that is not the last one may be low. */
  verdict: z.enum(['inside', 'low', 'high']),
  /** More of it is to come: from another lot, or after a refill. */
  isPart: z.boolean(),
  /** The name of what was weighed in instead of what the line asks for; null: what it asks for. */
  substitute: z.string().nullable(),
  /** What it was weighed on, whatever the plan says; null: nobody said. */
  scaleName: z.string().nullable(),
  /** What was asked about the reading, the vessel, and the lot that comes next; null: there is nothing of it. */
  reading: readingNote.nullable(),
});
export type WeighedIn = z.output<typeof weighedIn>;

export const batchScreen = z.discriminatedUnion('kind', [
  sheetRow.extend({
    kind: z.literal('addition'),
    screen: z.number(),
    /** While it is not weighed in: what share its grams are by now, where earlier weighings were not as planned. */
    shareNow: f.saying.nullable(),
    /** What stands, in the order of weighing; target, low and high are those of their sum. */
    entries: z.array(weighedIn),
    inGrams: z.string(),
    /** What is still to weigh: the target as it is now less what is in; nought where it is done. */
    leftGrams: z.string(),
    /** How near its tightest limit lies, and how far off its scale may be there; null: nothing binds it, or nobody knows. */
    limit: z.object({ exactGrams: z.string(), timesAllowed: z.string(), errorGrams: z.string() }).nullable(),
    done: weighedIn.nullable(),
  }),
  z.object({
    kind: z.literal('step'),
    screen: z.number(),
    position: z.number(),
    stage: z.string(),
    stepKind,
    what: z.string(),
    leastCelsius: z.string().nullable(),
    mostCelsius: z.string().nullable(),
    minutes: z.string().nullable(),
    caution: z.string(),
    /** Whipping: minutes of a round, how many are usual, by how much the maker expects it to grow. */
    roundMinutes: z.string().nullable(),
    rounds: z.number().nullable(),
    growsPercent: z.string().nullable(),
    /** Setting: hours until it is firm. */
    leastHours: z.string().nullable(),
    mostHours: z.string().nullable(),
    /** A base is done with once it stands covered: that it is firm is said of its lot. */
    isHandedOn: z.boolean(),
    /** Standing beginnings: one of a step, or one of each round of whipping. */
    begun: z.array(stepBegun),
    whipped: z.array(whipRound),
    photos: z.array(stepPhoto),
    done: z
      .object({
        entryId: f.id,
        at: f.instant,
        by: z.string(),
        celsius: z.string().nullable(),
        minutes: z.string().nullable(),
        remark: z.string(),
        weighed: stepWeighed.nullable(),
      })
      .nullable(),
    /** Of whipping and its cup test: the tins that the butter is meant for, where their brim volume is known. */
    tins: z.array(airTin),
    /** Of whipping and its cup test; null of any other step. */
    air: stepAir.nullable(),
  }),
]);
export type BatchScreen = z.output<typeof batchScreen>;

/** An entry that was struck: it stays readable. */
export const struckEntry = z.object({
  entryId: f.id,
  screen: z.number(),
  what: z.string(),
  /** Of a weighing; null of a step. */
  lotNumber: z.string().nullable(),
  actualGrams: z.string().nullable(),
  at: f.instant,
  by: z.string(),
  why: z.string(),
  struckAt: f.instant,
  struckBy: z.string(),
});

/** Something that was done differently; grams off the target where it was said of a weighing that stands. */
export const batchDeviation = z.object({
  entryId: f.id,
  screen: z.number().nullable(),
  step: z.string().nullable(),
  offGrams: z.string().nullable(),
  what: z.string(),
  why: z.string(),
  at: f.instant,
  by: z.string(),
});
export type BatchDeviation = z.output<typeof batchDeviation>;

/** The batch was made larger or smaller after it was begun, so that the percentages hold. */
export const batchResized = z.object({
  entryId: f.id,
  /** What was weighed too much or too little of. */
  item: z.string(),
  wasGrams: z.string(),
  isGrams: z.string(),
  reason: z.string(),
  at: f.instant,
  by: z.string(),
});

/** Weighed out and spilt before it went in. */
export const batchSpill = z.object({
  entryId: f.id,
  screen: z.number().nullable(),
  item: z.string(),
  lotNumber: z.string(),
  grams: z.string(),
  reason: z.string(),
  at: f.instant,
  by: z.string(),
});

/** What became of one line where the batch is made larger or smaller. */
export const resizedLine = z.object({
  position: z.number(),
  itemName: z.string(),
  lotNumber: z.string(),
  inGrams: z.string(),
  wasGrams: z.string(),
  isGrams: z.string(),
  /** Still to weigh then; nought where enough is in. */
  leftGrams: z.string(),
  scaleName: z.string().nullable(),
  /** `open`: not weighed yet; `more`: weighed already, and more of it is needed; `enough`; `over`: too much is in. */
  state: z.enum(['open', 'more', 'enough', 'over']),
  /** A step that what is in has been through already: what comes to it has to go through it too. */
  laterDone: z.string().nullable(),
  warning: f.saying.nullable(),
});

/** The batch as large as what went in of one line asks: what that takes, and whether it is there. */
export const resizeOffer = z.object({
  position: z.number(),
  direction: z.enum(['larger', 'smaller']),
  isPossible: z.boolean(),
  /** Why not; empty where it can be done. */
  hindrances: z.array(f.saying),
  wasGrams: z.string(),
  isGrams: z.string(),
  lines: z.array(resizedLine),
  tins: z.array(z.object({ productId: f.id, productName: z.string(), was: z.number(), is: z.number() })),
  room: z.array(z.object({ isThere: z.boolean(), says: f.saying })),
  /** Digest of all that: what the one tap is upon. */
  upon: z.string(),
});
export type ResizeOffer = z.output<typeof resizeOffer>;

export const batchState = z.enum(['making', 'made', 'abandoned']);

export const batchSummary = z.object({
  id: f.id,
  number: z.string(),
  formulaId: f.id,
  formulaName: z.string(),
  formulaKind: z.enum(['base', 'mixture']),
  revisionNumber: z.number(),
  purpose,
  state: batchState,
  startedAt: f.instant,
  plannedGrams: z.string(),
  screensDone: z.number(),
  screensTotal: z.number(),
  /** What was made of it: the mixture in the bowl, or the base in its tub. */
  lotId: f.id.nullable(),
  lotOnHand: z.string().nullable(),
  runs: z.array(
    z.object({
      id: f.id,
      number: z.string(),
      productName: z.string(),
      state: z.enum(['filling', 'closed', 'released', 'rejected']),
    }),
  ),
});

/** The batch with every weighing as wrong as its scale may be; null: not all is weighed in, or it is no batch for sale. */
export const worstCase = z
  .object({
    /** A limit may be broken by the scales' errors alone, or is broken already. */
    isHeld: z.boolean(),
    /** Digest of what was weighed: what a decision is taken upon. */
    upon: z.string(),
    over: z.array(f.saying),
    /** What would bring it within, and whether that is there. */
    ways: z.array(
      z.object({ says: f.saying, room: z.array(z.object({ isThere: z.boolean(), says: f.saying })) }),
    ),
    decided: z
      .object({ verdict: z.enum(['accepted', 'refused']), by: z.string(), reason: z.string(), at: f.instant })
      .nullable(),
  })
  .nullable();

export const batchView = batchSummary.extend({
  revisionId: f.id,
  markets: z.array(f.market),
  by: z.string(),
  tins: z.array(z.object({ productId: f.id, productName: z.string(), units: z.number() })),
  retained: z.object({ grams: z.string().nullable(), declinedBecause: z.string().nullable() }),
  screens: z.array(batchScreen),
  struck: z.array(struckEntry),
  /** What limits, report or label no longer allow of the batch as it was weighed in; null where nothing is wrong. */
  asWeighed: f.saying.nullable(),
  worstCase,
  deviations: z.array(batchDeviation),
  /** What each stage left behind, where it was weighed. */
  yields: z.array(stageYield),
  /** It is weighed as its maker has it in the hands, and the formula is written from it. */
  isWithoutRecipe: z.boolean(),
  resizes: z.array(batchResized),
  spills: z.array(batchSpill),
  outcome: z
    .object({
      yieldGrams: z.string(),
      inputGrams: z.string(),
      lossGrams: z.string(),
      at: f.instant,
      by: z.string(),
    })
    .nullable(),
  /** What tablets did while they were away and could not be entered as it came, answered or not. */
  claims: z.array(claim),
});

export const makingRoutes = {
  planBatch: route({
    method: 'POST',
    path: '/api/batch-plans',
    summary: 'Size a batch and lay out its weighing sheet; writes nothing',
    input: batchWish,
    output: batchPlan,
  }),
  listBatches: route({
    method: 'GET',
    path: '/api/batches',
    summary: 'Batches, the newest first',
    output: z.array(batchSummary),
  }),
  startBatch: route({
    method: 'POST',
    path: '/api/batches',
    summary: 'Start a batch from its plan; for sale only where the check allows it',
    input: z.strictObject({ stamp: f.stamp, wish: batchWish }),
    output: batchView,
  }),
  getBatch: route({
    method: 'GET',
    path: '/api/batches/:id',
    summary: 'One batch, screen by screen',
    output: batchView,
  }),
  recordAddition: route({
    method: 'POST',
    path: '/api/batches/:id/additions',
    summary: 'What was weighed in: on disk before the screen moves on',
    input: z.strictObject({
      stamp: f.stamp,
      position: z.number().int().min(0),
      lotId: f.id,
      scaleId: f.id.nullable(),
      actualGrams: f.gramsAboveZero,
      /** More of it is to come: from another lot, or after a refill. */
      isPart: z.boolean().default(false),
      /** The lot ran out with this part: the one that the rest is taken from. */
      restLotId: f.id.nullable().default(null),
      /** Asked for when the weight lies outside the band: what was done differently and why. */
      deviation: z.strictObject({ what: f.account, why: f.account }).optional(),
      /** The person was told that limits or report are broken with it, and it stays in. */
      isOverKnown: z.boolean().default(false),
      /** It was asked whether the reading is a slip, and it is none. */
      isReadingSure: z.boolean().default(false),
      /** The scale had failed its check, and it was weighed on it all the same: with what and why. */
      isScaleHeldKnown: z.boolean().default(false),
      /** What was read first, where that was a slip: kept with what was meant. */
      readingWas: readingAsked.nullable().default(null),
      /** Where it was weighed in a vessel: gross less tare is what went in. */
      vessel: vessel.nullable().default(null),
      /** Another material than the line asks for: in a trial only, and with what and why. */
      isSubstitute: z.boolean().default(false),
    }),
    /** What stands now, and not the whole batch: the entry that is made most often answers soonest. */
    output: weighedIn,
  }),
  weighWithoutRecipe: route({
    method: 'POST',
    path: '/api/batches/without-recipe',
    summary:
      'Weigh in as the maker has it in the hands: the first weighing begins a trial batch, and the formula is written from it',
    input: z.strictObject({
      stamp: f.stamp,
      /** null: this is the first weighing. */
      batchId: f.id.nullable(),
      /** Of the first weighing: a formula that is made again by hand; null: a new one. */
      formulaId: f.id.nullable().default(null),
      kind: z.enum(['base', 'mixture']).default('mixture'),
      lotId: f.id,
      scaleId: f.id.nullable(),
      actualGrams: f.gramsAboveZero,
      vessel: vessel.nullable().default(null),
      isReadingSure: z.boolean().default(false),
    }),
    output: batchView,
  }),
  stepWithoutRecipe: route({
    method: 'POST',
    path: '/api/batches/:id/steps-without-recipe',
    summary: 'A step as it was done, between the weighings: it becomes one of the method',
    input: z.strictObject({
      stamp: f.stamp,
      kind: stepKind,
      what: f.name,
      celsius: f.celsius.nullable(),
      minutes: f.minutes.nullable(),
    }),
    output: batchView,
  }),
  finishWithoutRecipe: route({
    method: 'POST',
    path: '/api/batches/:id/finish-without-recipe',
    summary: 'That was all: what came out becomes a lot, and what was weighed a formula with a name',
    input: z.strictObject({
      stamp: f.stamp,
      yieldGrams: f.gramsAboveZero,
      isYieldSure: z.boolean().default(false),
      /** '': it keeps the name that it was begun with. */
      name: f.text,
      /** Of a formula that was made again: what was weighed is written down under that name as a formula of its own. */
      isNewFormula: z.boolean().default(false),
    }),
    output: batchView,
  }),
  getWandering: route({
    method: 'GET',
    path: '/api/formulas/:id/wandering',
    summary: 'Which line wanders from making to making, and how much that matters: from three makings on',
    output: z.object({
      made: z.number(),
      /** The room is that of the strictest of these: where it was made for, and where its products are sold. */
      markets: z.array(f.market),
      /** Empty while there are fewer than three makings of the newest revision that was made. */
      lines: z.array(
        z.object({
          itemId: f.id,
          itemName: z.string(),
          askedPercent: z.string(),
          meanPercent: z.string(),
          spreadPercent: z.string(),
          leastPercent: z.string(),
          mostPercent: z.string(),
          roomLowPercent: z.string(),
          roomHighPercent: z.string(),
          bound: z.enum(['limit', 'report', 'band']),
          /** How much of its room the farthest making used; 1 is the edge; null: none was left, and one went beyond. */
          used: z.string().nullable(),
          /** The share of each making, the oldest first. */
          shares: z.array(z.string()),
        }),
      ),
    }),
  }),
  /** Of parts only: that is all there is of it. */
  closeAddition: route({
    method: 'POST',
    path: '/api/batches/:id/closed-additions',
    summary: 'That is all there is of it: nothing more is weighed at this position',
    input: z.strictObject({
      stamp: f.stamp,
      position: z.number().int().min(0),
      deviation: z.strictObject({ what: f.account, why: f.account }),
      /** The person was told that limits or report are broken without the rest, and it stays so. */
      isOverKnown: z.boolean().default(false),
    }),
    output: batchView,
  }),
  recordSpill: route({
    method: 'POST',
    path: '/api/batches/:id/spills',
    summary: 'Weighed out and spilt before it went in: out of the lot, not in the bowl',
    input: z.strictObject({
      stamp: f.stamp,
      position: z.number().int().min(0),
      lotId: f.id,
      grams: f.gramsAboveZero,
      reason: f.name,
      /** A weighing that was entered already and never went in: it is struck with it. */
      entryId: f.id.nullable().default(null),
    }),
    output: batchView,
  }),
  offerResize: route({
    method: 'POST',
    path: '/api/batches/:id/resize-offers',
    summary: 'What it takes to make the batch as large as what is in of one line; writes nothing',
    input: z.strictObject({
      position: z.number().int().min(0),
      /** What is about to be entered there, besides what is in. */
      moreGrams: f.grams.default('0'),
    }),
    output: resizeOffer,
  }),
  resizeBatch: route({
    method: 'POST',
    path: '/api/batches/:id/resizes',
    summary: 'Make the batch as large as what is in of one line, so that the percentages hold',
    input: z.strictObject({
      stamp: f.stamp,
      position: z.number().int().min(0),
      upon: z.string().max(64),
      reason: f.text.default(''),
    }),
    output: batchView,
  }),
  /** Strikes a wrong entry: it stays readable, its amount goes back to the lot. */
  strikeAddition: route({
    method: 'POST',
    path: '/api/batches/:id/strikes',
    summary: 'Strike a wrong entry; it stays readable',
    input: z.strictObject({ stamp: f.stamp, entryId: f.id, reason: f.name }),
    output: batchView,
  }),
  recordStep: route({
    method: 'POST',
    path: '/api/batches/:id/steps',
    summary: 'A step done: temperature, time, remark',
    input: z.strictObject({
      stamp: f.stamp,
      position: z.number().int().min(0),
      celsius: f.celsius.nullable(),
      minutes: f.minutes.nullable(),
      remark: f.text,
      weighed: stepWeighed.nullable().default(null),
      /** Needed where temperature, time or weight are not what the step wants. */
      deviation: z.strictObject({ what: f.account, why: f.account }).optional(),
    }),
    output: batchView,
  }),
  recordDeviation: route({
    method: 'POST',
    path: '/api/batches/:id/deviations',
    summary: 'What was done differently and why',
    input: z.strictObject({
      stamp: f.stamp,
      screen: z.number().int().min(0).nullable(),
      what: f.account,
      why: f.account,
    }),
    output: batchView,
  }),
  finishBatch: route({
    method: 'POST',
    path: '/api/batches/:id/finish',
    summary: 'Making is over: weigh what there is; it becomes a lot',
    input: z.strictObject({
      stamp: f.stamp,
      yieldGrams: f.gramsAboveZero,
      /** It was asked whether so much is really gone, and it is. */
      isYieldSure: z.boolean().default(false),
    }),
    output: batchView,
  }),
  decideWorstCase: route({
    method: 'POST',
    path: '/api/batches/:id/worst-case',
    summary: 'A named person decides on a batch that the errors of its scales alone may bring over a limit',
    input: z.strictObject({
      stamp: f.stamp,
      verdict: z.enum(['accepted', 'refused']),
      reason: f.name,
      upon: z.string().max(64),
    }),
    output: batchView,
  }),
  abandonBatch: route({
    method: 'POST',
    path: '/api/batches/:id/abandon',
    summary: 'Give a batch up, with a reason; what was weighed in stays used',
    input: z.strictObject({ stamp: f.stamp, reason: f.name }),
    output: batchView,
  }),
  getBatchSheet: route({
    method: 'GET',
    path: '/api/batches/:id/sheet.pdf',
    summary: 'Weighing sheet and batch record',
    output: z.unknown(),
    media: 'application/pdf',
  }),
};
