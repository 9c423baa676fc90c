import { z } from 'zod';
import { fillQuestionCodes } from '../core/filling/index.ts';
import { cupQuestionCodes } from '../core/making/index.ts';
import * as f from './fields.ts';
import { route } from './route.ts';

/** A request of the bench as a tablet kept it while it was away, whole. */
export const keptEntry = z.strictObject({
  /** Of its stamp. */
  id: f.id,
  /** Its name in the table of routes, as that tablet's page knew it. */
  route: f.name,
  params: z.record(z.string().max(64), z.string().max(64)),
  body: z.record(z.string(), z.unknown()),
  /** When it happened, by that tablet's clock. */
  at: z.string().max(40),
});

const refusal = z.strictObject({
  code: f.name,
  where: z.string().max(400),
  found: f.problemValue.optional(),
  allowed: f.problemValue.optional(),
  source: z.string().max(400).optional(),
  parameters: z.record(z.string(), f.problemValue).optional(),
});

/** Something that was done while a tablet was away, and could not be entered as it was sent: it stands, and it asks. */
export const claim = z.object({
  id: f.id,
  keptId: f.id,
  subjectKind: z.enum(['batch', 'filling-run', 'workshop']),
  subjectId: z.string(),
  /** Batch or run by the number that people know it by; null: nobody knows it here. */
  subjectNumber: z.string().nullable(),
  what: f.saying,
  /** The facts of the entry, as it was typed. */
  facts: z.array(f.saying),
  at: z.string(),
  by: z.string(),
  device: z.string(),
  recordedAt: f.instant,
  problems: z.array(refusal),
  /** What it may be entered with; null: it can only be set aside. */
  mayEnter: z
    .object({
      /** The entry that stands in its place: struck, where the person says so. */
      instead: z.object({ entryId: f.id, what: f.saying, by: z.string(), at: f.instant }).nullable(),
      /** Both may be true: two people did the same, and both is in. */
      isBesides: z.boolean(),
      /** Its time cannot be right: when it was, by what is known of that tablet's clock. */
      likelyAt: f.instant.nullable(),
    })
    .nullable(),
  answer: z
    .object({ how: z.enum(['entered', 'aside']), reason: z.string(), by: z.string(), at: f.instant })
    .nullable(),
});
export type Claim = z.output<typeof claim>;

/** A yes of its own for each of these. */
const YES_FIELDS = {
  'weighed-over-limits': 'isOverKnown',
  'closed-over-limits': 'isOverKnown',
  'reading-doubtful': 'isReadingSure',
  'scale-held': 'isScaleHeldKnown',
  'count-gains': 'isGainSure',
};

/**
 * What the bench asks before an entry counts: the code of the question, and the fields that may hold the yes. `sure` lists
 * the codes themselves.
 */
export const benchQuestions: ReadonlyMap<string, readonly string[]> = new Map<string, readonly string[]>([
  ...[...fillQuestionCodes, ...cupQuestionCodes].map((code) => [code, ['sure']] as const),
  ...Object.entries(YES_FIELDS).map(([code, field]) => [code, [field, 'sure']] as const),
]);

/** What was done at the bench while a tablet was away. */
export const awayRoutes = {
  keepClaim: route({
    method: 'POST',
    path: '/api/claims',
    summary:
      'Keep on record what a tablet entered while it was away and was refused when it came; it is asked about',
    input: z.strictObject({ stamp: f.stamp, entry: keptEntry, problems: z.array(refusal).min(1).max(50) }),
    output: claim,
  }),
  listClaims: route({
    method: 'GET',
    path: '/api/claims',
    summary: 'What tablets entered while they were away and nobody has answered yet, the oldest first',
    output: z.array(claim),
  }),
  answerClaim: route({
    method: 'POST',
    path: '/api/claims/:id/answer',
    summary: 'Enter it after all, with an explanation, or set it aside with a reason',
    input: z.strictObject({
      stamp: f.stamp,
      how: z.enum(['enter', 'aside']),
      reason: f.name,
      /** Entered in the place of this entry, which is struck. */
      strikes: f.id.nullable().default(null),
      /** When it really was, where the tablet's clock was wrong. */
      at: f.instant.nullable().default(null),
      /** Questions that the bench would have asked, by their codes: whoever answers has read them, and says yes. */
      sure: z.array(f.name).max(20).default([]),
    }),
    output: claim,
  }),
};
