import type { z } from 'zod';
import type { labels, Market, Saying } from '../../contract/index.ts';
import { done, problem, type Result, refused } from '../../core/problem.ts';
import {
  giveUp,
  insertLabelCount,
  listLabelCounts,
  listLabelPrints,
  type SignedLabelCount,
  type SignedLabelPrint,
} from '../../storage/index.ts';
import { say } from '../../words/index.ts';
import type { Context } from '../context.ts';
import { gatherRun, type RunRecords } from '../filling/run-records.ts';
import { inside } from '../inside.ts';
import { record, thingNotFound } from '../record.ts';
import { saying } from '../saying.ts';
import type { UseCase } from '../use-case.ts';
import { sumPrinted } from './count-printed.ts';
import { designOf } from './label-design.ts';
import { readPrintedDesign } from './printed-design.ts';

type Counts = z.output<typeof labels.labelCounts>;
type Row = Counts['rows'][number];
type Kind = Pick<Row, 'role'> & { readonly id: string };

export const getLabelCounts: UseCase<'getLabelCounts'> = (context, { params: { id = '' } }) =>
  viewCounts(context, id);

/** Labels are counted by a person, once or again: of each kind the last count stands. */
export const countLabels: UseCase<'countLabels'> = (context, { params: { id = '' }, body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const records = (await gatherRun(tx, id)) ?? giveUp(thingNotFound('id', id));
      const { stamp, pieceId, used, spoilt, remark } = body;
      const prints = await listLabelPrints(tx, id);
      const kinds = await listKinds(inside(context, tx), records, prints);
      if (!kinds.some((kind) => kind.id === pieceId)) {
        const allowed = kinds.map((kind) => kind.id).join(', ');
        giveUp(problem('label-piece-unknown', 'pieceId', { found: pieceId, allowed }));
      }
      const printed = sumPrinted(prints).get(pieceId) ?? 0;
      const says = sayCount({ printed, used, spoilt, left: printed - used - spoilt, tins: tinsOf(records) });
      // A count that does not add up stands only with a word of whoever counted.
      if (says.code !== 'labels-add-up' && remark.trim() === '')
        giveUp(problem('label-count-needs-reason', 'remark', { parameters: { says: say(says) } }));
      await tell({
        kind: 'labels-counted',
        subjectKind: 'filling-run',
        subjectId: id,
        payload: { number: records.head.number, pieceId, used, spoilt, remark },
      });
      await insertLabelCount(tx, {
        entry_id: stamp.id,
        filling_run_id: id,
        kind: pieceId,
        used,
        spoilt,
        remark,
      });
      return id;
    },
    (runId) => viewCounts(context, runId),
  );

async function viewCounts(context: Context, id: string): Promise<Result<Counts>> {
  const { db } = context.storage;
  const records = await gatherRun(db, id);
  if (!records) return refused(thingNotFound('id', id));
  const prints = await listLabelPrints(db, id);
  const counts = new Map((await listLabelCounts(db, id)).map((row) => [row.kind, row]));
  const printed = sumPrinted(prints);
  const tins = tinsOf(records);
  const kinds = await listKinds(context, records, prints);
  const rows = kinds.map((kind) => viewRow(kind, printed.get(kind.id) ?? 0, counts.get(kind.id), tins));
  return done({
    runId: id,
    number: records.head.number,
    tins,
    says: sayAll(rows, tins),
    rows,
    prints: prints.map(viewPrint),
  });
}

/** As the run was closed; null: it is being filled. */
const tinsOf = ({ close }: RunRecords): number | null => close?.units ?? null;

/** What its product is labelled with today, and what was printed for it before. */
async function listKinds(
  context: Context,
  { head, details }: RunRecords,
  prints: readonly SignedLabelPrint[],
): Promise<Kind[]> {
  const design = await designOf(context.storage.db, head.product_id, details);
  const before = prints.flatMap((print) => readPrintedDesign(print.design).pieces);
  const today = design.pieces.map(({ id, role }): Kind => ({ id, role }));
  return [...new Map([...before, ...today].map((kind) => [kind.id, kind])).values()].sort(
    (one, other) => ORDER.indexOf(one.role) - ORDER.indexOf(other.role),
  );
}

const ORDER: readonly Row['role'][] = ['front', 'back', 'whole', 'sticker', 'leaflet'];

function viewRow(
  { id, role }: Kind,
  printed: number,
  count: SignedLabelCount | undefined,
  tins: number | null,
): Row {
  // Where nothing was printed, the tins carry labels from elsewhere, or none yet.
  const used = count?.used ?? (printed === 0 ? 0 : (tins ?? 0));
  const spoilt = count?.spoilt ?? 0;
  const left = printed - used - spoilt;
  const figures = { printed, used, spoilt, left, tins };
  const says = count === undefined ? sayUncounted(figures) : sayCount(figures);
  return {
    pieceId: id,
    role,
    printed,
    used,
    isCounted: count !== undefined,
    spoilt,
    left,
    remark: count?.remark ?? '',
    by: count?.person_name ?? null,
    at: count?.happened_at ?? null,
    says,
    isSound: says.code === 'labels-add-up' || says.code === 'labels-none',
  };
}

interface Figures {
  readonly printed: number;
  readonly used: number;
  readonly spoilt: number;
  readonly left: number;
  readonly tins: number | null;
}

/** Printed is not stuck on: nobody knows of these until somebody counts. */
function sayUncounted({ printed, tins }: Figures): Saying {
  if (printed === 0) return saying('labels-none');
  return saying(tins === null ? 'labels-run-open' : 'labels-uncounted', { printed });
}

/** More on tins and spoilt than there were, or another number on tins than there are tins: somebody has to look. */
function sayCount({ printed, used, spoilt, left, tins }: Figures): Saying {
  const figures = { printed, used, spoilt, left, tins: tins ?? 0 };
  if (left < 0) return saying('labels-too-few', { ...figures, lacking: -left });
  if (tins !== null && used !== tins)
    return saying(used < tins ? 'labels-tins-without' : 'labels-more-than-tins', {
      ...figures,
      apart: Math.abs(tins - used),
    });
  return saying('labels-add-up', figures);
}

function sayAll(rows: readonly Row[], tins: number | null): Saying {
  const wrong = rows.filter(({ isSound, isCounted }) => isCounted && !isSound).length;
  const uncounted = rows.filter(({ printed, isCounted }) => printed > 0 && !isCounted).length;
  if (rows.every(({ printed, isCounted }) => printed === 0 && !isCounted)) return saying('labels-all-none');
  if (tins === null) return saying('labels-all-open');
  if (wrong === 0 && uncounted > 0) return saying('labels-all-uncounted', { uncounted });
  return wrong === 0 ? saying('labels-all-add-up') : saying('labels-all-look', { wrong });
}

function viewPrint(row: SignedLabelPrint): Counts['prints'][number] {
  const { pieces, sheet, firstPosition } = readPrintedDesign(row.design);
  return {
    id: row.entry_id,
    market: row.market as Market,
    copies: row.copies,
    pieces: pieces.map(({ role }) => role),
    sheet: sheet?.name ?? null,
    firstPosition,
    at: row.happened_at,
    by: row.person_name,
  };
}
