import { type away, type Route, routes } from '../contract/index.ts';
import {
  findBatch,
  findBatchLine,
  findRun,
  findScale,
  listAdditionsAt,
  listBatchLines,
  listBatchSteps,
  listClaimsOf,
  listLotsAtHand,
  listStepRecords,
  type Reader,
  type Signed,
  type SignedClaim,
} from '../storage/index.ts';
import { sayWhere } from '../words/index.ts';
import { mayBeEnteredLate } from './may-be-entered-late.ts';
import { gramsText } from './quantity-text.ts';
import { saying } from './saying.ts';

type Claim = away.Claim;
type Body = Readonly<Record<string, unknown>>;

/** Clocks that differ by less tell of nothing (common practice, no source; as when an entry is made). */
const CLOCKS_DIFFER_MS = 5 * 60_000;
/** Times that an entry cannot have happened at. */
const WRONG_TIME: ReadonlySet<string> = new Set([
  'entry-in-future',
  'entry-before-its-thing',
  'tablet-clock-behind',
]);

/** What a tablet brought back, with what may be done about it. */
export async function viewClaim(db: Reader, row: SignedClaim): Promise<Claim> {
  const { params, body } = JSON.parse(row.request) as { params: Record<string, string>; body: Body };
  const problems = JSON.parse(row.problems) as Claim['problems'];
  const kind = row.subject_kind as Claim['subjectKind'];
  const told = await tellWhat(db, row, params, body);
  return {
    id: row.entry_id,
    keptId: row.kept_id,
    subjectKind: kind,
    subjectId: row.subject_id,
    subjectNumber: await numberOf(db, kind, row.subject_id),
    what: told.what,
    facts: told.facts,
    at: row.happened_at,
    by: row.by_name ?? '',
    device: row.device,
    recordedAt: row.recorded_at,
    problems,
    mayEnter: row.answer === null ? await findWays(db, row, body, problems) : null,
    answer: answerOf(row),
  };
}

export const viewClaimsOf = async (db: Reader, kind: Claim['subjectKind'], id: string): Promise<Claim[]> => {
  const claims: Claim[] = [];
  for (const row of await listClaimsOf(db, kind, id)) claims.push(await viewClaim(db, row));
  return claims;
};

const answerOf = (row: SignedClaim): Claim['answer'] =>
  row.answer === null
    ? null
    : {
        how: row.answer as 'entered' | 'aside',
        reason: row.answer_reason ?? '',
        by: row.answered_by ?? '',
        at: row.answered_at ?? row.recorded_at,
      };

async function numberOf(db: Reader, kind: Claim['subjectKind'], id: string): Promise<string | null> {
  if (kind === 'batch') return (await findBatch(db, id))?.number ?? null;
  return kind === 'filling-run' ? ((await findRun(db, id))?.number ?? null) : null;
}

const textOf = (value: unknown): string => (typeof value === 'string' ? value : '');

async function tellWhat(
  db: Reader,
  row: SignedClaim,
  params: Readonly<Record<string, string>>,
  body: Body,
): Promise<Pick<Claim, 'what' | 'facts'>> {
  if (row.route === 'recordAddition')
    return { what: await tellAddition(db, params.id ?? '', body), facts: [] };
  if (row.route === 'recordFill')
    return { what: saying('claim-fill', { grams: textOf(body.grossGrams) }), facts: [] };
  if (row.route === 'recordStep')
    return { what: await tellStep(db, params.id ?? '', body), facts: listFacts(body, ['position']) };
  const summary = (routes as Readonly<Record<string, Route>>)[row.route]?.summary ?? row.route;
  const thing = await nameThing(db, row.route, params.id ?? '');
  return { what: saying('claim-other', { what: summary }), facts: [...thing, ...listFacts(body, [])] };
}

/** The lot or the scale that it was sent to, by the name that people know. */
async function nameThing(db: Reader, route: string, id: string): Promise<Claim['facts']> {
  if (route === 'countLot') {
    const [lot] = await listLotsAtHand(db, { lotIds: [id] });
    return lot ? [factOf('lotId', `${lot.number}, ${lot.item_name}`)] : [];
  }
  const scale = route === 'recordScaleCheck' ? await findScale(db, id) : undefined;
  return scale ? [factOf('scaleId', scale.name)] : [];
}

const factOf = (field: string, value: string) => saying('claim-fact', { field: sayWhere(field), value });

async function tellAddition(db: Reader, batchId: string, body: Body) {
  const lines = await listBatchLines(db, batchId);
  const line = lines.find(({ position }) => position === body.position);
  const [lot] = await listLotsAtHand(db, { lotIds: [textOf(body.lotId)] });
  return saying('claim-addition', {
    grams: textOf(body.actualGrams),
    item: line?.item_name ?? lot?.item_name ?? '',
    lot: lot?.number ?? '',
  });
}

async function tellStep(db: Reader, batchId: string, body: Body) {
  const steps = await listBatchSteps(db, batchId);
  return saying('claim-step', { step: steps.find(({ position }) => position === body.position)?.what ?? '' });
}

/** Text that says something to a reader; ids and pictures do not. */
const isReadable = (value: unknown): value is string | number =>
  typeof value === 'number' || (typeof value === 'string' && value !== '' && value.length <= 200);

const listFacts = (body: Body, without: readonly string[]): Claim['facts'] =>
  Object.entries(body).flatMap(([field, value]) =>
    isReadable(value) && !/Id$/.test(field) && !without.includes(field) ? [factOf(field, String(value))] : [],
  );

async function findWays(
  db: Reader,
  row: SignedClaim,
  body: Body,
  problems: Claim['problems'],
): Promise<Claim['mayEnter']> {
  if (!mayBeEnteredLate(row.route)) return null;
  const likelyAt = findLikelyTime(row, problems);
  if (row.subject_kind === 'batch') {
    const batch = await findBatch(db, row.subject_id);
    if (!batch) return null;
    if (row.route === 'recordAddition')
      // Of what is over nothing is struck any more.
      return {
        instead: batch.outcome === null ? await findWeighed(db, batch.id, body) : null,
        isBesides: true,
        likelyAt,
      };
    // What is over takes late what was weighed into it, and nothing else.
    if (batch.outcome !== null) return null;
    if (row.route !== 'recordStep') return { instead: null, isBesides: true, likelyAt };
    const instead = await findStep(db, batch.id, body);
    return { instead, isBesides: instead === null, likelyAt };
  }
  // A lot counted, a scale checked: whatever the workshop still takes.
  if (row.subject_kind === 'workshop') return { instead: null, isBesides: true, likelyAt };
  const run = await findRun(db, row.subject_id);
  return run && !run.is_closed ? { instead: null, isBesides: true, likelyAt } : null;
}

async function findWeighed(db: Reader, batchId: string, body: Body) {
  const position = Number(body.position);
  const line = await findBatchLine(db, batchId, position);
  const standing = (await listAdditionsAt(db, batchId, position)).filter((each) => !each.is_struck).at(-1);
  if (!line || !standing) return null;
  const [lot] = await listLotsAtHand(db, { lotIds: [standing.lot_id] });
  const facts = { grams: gramsText(standing.actual_ug), item: lot?.item_name ?? '', lot: lot?.number ?? '' };
  return standsAs(standing, saying('claim-addition', facts));
}

async function findStep(db: Reader, batchId: string, body: Body) {
  const records = await listStepRecords(db, batchId);
  const standing = records.find((each) => each.position === body.position && !each.is_struck);
  return standing ? standsAs(standing, await tellStep(db, batchId, body)) : null;
}

const standsAs = (
  { entry_id, person_name, happened_at }: Signed & { readonly entry_id: string },
  what: Claim['what'],
) => ({ entryId: entry_id, what, by: person_name, at: happened_at });

/** Both clocks were read when the tablet came back: what the one is off by, its entries are off by. */
function findLikelyTime(row: SignedClaim, problems: Claim['problems']): string | null {
  if (!problems.some(({ code }) => WRONG_TIME.has(code))) return null;
  const offMs = Date.parse(row.told_at) - Date.parse(row.recorded_at);
  const at = Date.parse(row.happened_at);
  if (Number.isNaN(at) || Math.abs(offMs) <= CLOCKS_DIFFER_MS) return null;
  return new Date(at - offMs).toISOString();
}
