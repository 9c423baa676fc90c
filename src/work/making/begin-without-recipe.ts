import type { Stamp } from '../../contract/index.ts';
import { problem } from '../../core/problem.ts';
import {
  type FormulaRow,
  findFormula,
  findWithoutRecipe,
  giveUp,
  insertBatch,
  insertFormula,
  insertRevision,
  insertWithoutRecipe,
  lastBatchNumber,
  listFormulas,
  listRevisions,
  type WithoutRecipeRow,
  type Writer,
} from '../../storage/index.ts';
import { mishapWords } from '../../words/index.ts';
import type { Context } from '../context.ts';
import { thingNotFound } from '../record.ts';
import type { RequestOf } from '../use-case.ts';
import { openBatch } from './open-batch.ts';
import { nextNumber } from './start-batch.ts';

export interface BegunWithoutRecipe {
  readonly batchId: string;
  readonly isNew: boolean;
  readonly row: WithoutRecipeRow;
  /** What is begun with it, for the chain. */
  readonly story: unknown;
  /** Writes what is begun with it, once its story is told. */
  readonly write: () => Promise<void>;
}

interface Wish {
  readonly body: RequestOf<'weighWithoutRecipe'>['body'];
  /** The day at the bench. */
  readonly on: string;
}

/** A making that goes on where it stood. */
export async function openWithoutRecipe(
  tx: Writer,
  batchId: string,
  stamp: Stamp,
): Promise<BegunWithoutRecipe> {
  const batch = await openBatch(tx, batchId, stamp);
  const row = await findWithoutRecipe(tx, batch.id);
  if (!row) giveUp(problem('batch-has-recipe', `batch ${batch.number}`));
  return { batchId: batch.id, isNew: false, row, story: undefined, write: async () => {} };
}

/**
 * Begins one: a trial batch, and where the formula is new, that with a name for the time being and an empty revision,
 * which is written from what is weighed. A formula that stands is made again by hand by its newest revision, which stays.
 */
export async function beginWithoutRecipe(
  context: Context,
  tx: Writer,
  { body, on }: Wish,
): Promise<BegunWithoutRecipe> {
  const known = body.formulaId === null ? undefined : await findFormula(tx, body.formulaId);
  if (body.formulaId !== null && !known) giveUp(thingNotFound('formulaId', body.formulaId));
  const newest = known && (await listRevisions(tx, known.id)).at(-1);
  if (known && !newest) giveUp(problem('formula-not-written', known.name));
  const formula = known ?? (await newFormula(context, tx, { body, on }));
  const revisionId = newest?.id ?? context.machine.newId();
  const batchId = context.machine.newId();
  const row: WithoutRecipeRow = {
    entry_id: body.stamp.id,
    batch_id: batchId,
    formula_id: formula.id,
    revision_id: revisionId,
    is_first: newest ? 0 : 1,
  };
  const batch = {
    id: batchId,
    entry_id: body.stamp.id,
    number: nextNumber(formula.code, await lastBatchNumber(tx, formula.code)),
    formula_id: formula.id,
    revision_id: revisionId,
    purpose: 'trial',
    markets: JSON.stringify(['GB']),
    planned_ug: 0,
    retained_ug: null,
    declined_because: null,
    started_at: context.machine.now(),
  };
  return {
    batchId,
    isNew: true,
    row,
    story: {
      number: batch.number,
      formulaId: formula.id,
      name: formula.name,
      kind: formula.kind,
      revisionId,
    },
    write: async () => {
      if (!known) await insertFormula(tx, formula);
      if (!newest)
        await insertRevision(
          tx,
          { id: revisionId, formula_id: formula.id, number: 1, details: FIRST_DETAILS, version: 1 },
          { lines: [], steps: [] },
        );
      await insertBatch(tx, batch, [], []);
      await insertWithoutRecipe(tx, row);
    },
  };
}

/** What nobody has said yet, as a new formula has it: asked on its own page. */
export const FIRST_DETAILS = JSON.stringify({
  use: 'leave-on',
  category: '5A',
  bodyPart: 'body',
  productType: 'body-lotion',
  alsoUsedAs: [],
  minAgeMonths: null,
  standing: 'trial',
  settingHours: null,
  keepMonths: null,
  note: '',
});

async function newFormula(context: Context, tx: Writer, { body, on }: Wish): Promise<FormulaRow> {
  const all = await listFormulas(tx);
  const first = mishapWords.withoutRecipe(on);
  const names = new Set(all.map((row) => row.name.toLowerCase()));
  let name = first;
  for (let nth = 2; names.has(name.toLowerCase()); nth += 1) name = `${first} (${nth})`;
  return { id: context.machine.newId(), name, code: findFreeCode(all), kind: body.kind, version: 1 };
}

export function findFreeCode(all: readonly FormulaRow[]): string {
  const codes = new Set(all.map((row) => row.code));
  return freeCodes().find((each) => !codes.has(each)) ?? 'MMMM';
}

/** M for made, and a letter or two: MA, MB ... MZZ. */
function freeCodes(): string[] {
  const letters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'];
  return [
    ...letters.map((one) => `M${one}`),
    ...letters.flatMap((one) => letters.map((two) => `M${one}${two}`)),
  ];
}

interface Staged {
  readonly stage: string;
}

/** What is weighed after a step belongs to the next part: so the order of weighings and steps is kept. */
export function findStageNow(lines: readonly Staged[], steps: readonly Staged[]): string {
  const last = Math.max(0, ...lines.map(numberOf), ...steps.map(numberOf));
  const isStepped = steps.some((step) => numberOf(step) === last);
  return mishapWords.part(last === 0 ? 1 : isStepped ? last + 1 : last);
}

const numberOf = ({ stage }: Staged): number => Number(/\d+$/.exec(stage)?.[0] ?? 0);
