import { problem } from '../../core/problem.ts';
import { microgramsFromGrams } from '../../core/quantity/index.ts';
import {
  type BatchHead,
  type FormulaRow,
  findFormula,
  findRevision,
  giveUp,
  insertFormula,
  insertRevision,
  listAdditions,
  listBatchLines,
  listBatchSteps,
  listFormulas,
  listStepRecords,
  type NamedBatchLine,
  orGiveUp,
  replaceRevision,
  type SignedAddition,
  updateFormula,
  type WithoutRecipeRow,
  type Writer,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';
import { gramsText } from '../quantity-text.ts';
import { record } from '../record.ts';
import { refuseOpenClaims } from '../refuse-open-claims.ts';
import type { UseCase } from '../use-case.ts';
import { viewBatch } from './batch-view.ts';
import { FIRST_DETAILS, findFreeCode, openWithoutRecipe } from './begin-without-recipe.ts';
import { planMadeLot, refuseHalfGone, refuseYieldAbove, writeMadeLot } from './finish-batch.ts';
import { openBatch } from './open-batch.ts';
import { standingAt } from './weigh-state.ts';

/** That was all: the lot is made, and the formula is what stands of the weighings, in their order, with a name. */
export const finishWithoutRecipe: UseCase<'finishWithoutRecipe'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const batch = await openBatch(tx, params.id ?? '', body.stamp);
      const { row } = await openWithoutRecipe(tx, batch.id, body.stamp);
      await refuseOpenClaims(tx, 'batch', batch.id, `batch ${batch.number}`);
      const yieldUg = orGiveUp(microgramsFromGrams(body.yieldGrams, 'yieldGrams'));
      const lines = await listBatchLines(tx, batch.id);
      const additions = (await listAdditions(tx, batch.id)).filter((each) => !each.is_struck);
      if (additions.length === 0) giveUp(problem('nothing-weighed-yet', `batch ${batch.number}`));
      refuseYieldAbove(lines, additions, yieldUg);
      refuseHalfGone(additions, yieldUg, body.isYieldSure);
      const name = body.name.trim();
      await refuseTaken(tx, row.formula_id, name);
      const own = row.is_first === 0 ? await planOwnFormula(context, tx, batch, { ...body, name }) : null;
      const lot = await planMadeLot(context, tx, batch, body, additions);
      await tell({
        kind: 'batch-made',
        subjectKind: 'batch',
        subjectId: batch.id,
        payload: {
          number: batch.number,
          yieldGrams: gramsText(yieldUg),
          lot,
          name,
          formulaId: row.formula_id,
          ...(own && { written: own.formula }),
        },
      });
      if (own) await writeOwnFormula(tx, own, { lines, additions });
      if (row.is_first === 1) await writeFormula(tx, row, { lines, additions, batchId: batch.id });
      if (row.is_first === 1 && name !== '') await rename(tx, row.formula_id, name);
      await writeMadeLot(context, tx, lot, { batch, yieldUg, entryId: body.stamp.id });
      return batch.id;
    },
    (id) => viewBatch(context, id),
  );

async function refuseTaken(tx: Writer, formulaId: string, name: string): Promise<void> {
  const isTaken = (await listFormulas(tx)).some(
    (row) => row.id !== formulaId && row.name.toLowerCase() === name.toLowerCase(),
  );
  if (isTaken) giveUp(problem('formula-name-taken', 'name', { found: name }));
}

interface OwnFormula {
  readonly formula: FormulaRow;
  readonly revisionId: string;
}

/**
 * What was begun as a formula made again stays a making of it, with its lot. Another name at its end is another formula: it
 * is asked for, and then written down from what was weighed, as a trial without a method; nothing is dropped in silence.
 */
async function planOwnFormula(
  context: Context,
  tx: Writer,
  batch: BatchHead,
  { name, isNewFormula }: { readonly name: string; readonly isNewFormula: boolean },
): Promise<OwnFormula | null> {
  const made = await findFormula(tx, batch.formula_id);
  if (!made || name === '' || name.toLowerCase() === made.name.toLowerCase()) return null;
  if (!isNewFormula)
    giveUp(problem('made-again-named', 'name', { found: name, parameters: { formula: made.name } }));
  const code = findFreeCode(await listFormulas(tx));
  const formula = { id: context.machine.newId(), name, code, kind: made.kind, version: 1 };
  return { formula, revisionId: context.machine.newId() };
}

async function writeOwnFormula(
  tx: Writer,
  { formula, revisionId }: OwnFormula,
  made: Pick<Made, 'lines' | 'additions'>,
): Promise<void> {
  await insertFormula(tx, formula);
  await insertRevision(
    tx,
    { id: revisionId, formula_id: formula.id, number: 1, details: FIRST_DETAILS, version: 1 },
    { lines: linesOf(revisionId, made), steps: [] },
  );
}

async function rename(tx: Writer, formulaId: string, name: string): Promise<void> {
  const formula = await findFormula(tx, formulaId);
  if (formula) await updateFormula(tx, { ...formula, name }, formula.version);
}

interface Made {
  readonly batchId: string;
  readonly lines: readonly NamedBatchLine[];
  readonly additions: readonly SignedAddition[];
}

/** A weighing that was struck leaves no line, a step that was struck no step; the rest stands in its order. */
async function writeFormula(tx: Writer, row: WithoutRecipeRow, made: Made): Promise<void> {
  const revision = await findRevision(tx, row.revision_id);
  if (!revision) throw new Error(`batch ${made.batchId} is of a revision that is not there`);
  const records = (await listStepRecords(tx, made.batchId)).filter((each) => !each.is_struck);
  const steps = (await listBatchSteps(tx, made.batchId)).filter((step) =>
    records.some((each) => each.position === step.position),
  );
  const { is_fixed: _fixed, ...kept } = revision;
  await replaceRevision(
    tx,
    kept,
    {
      lines: linesOf(revision.id, made),
      // Records name a step by its position: where one was struck the others keep theirs.
      steps,
    },
    revision.version,
  );
}

/** What stands of the weighings, in their order. */
function linesOf(revisionId: string, { lines, additions }: Pick<Made, 'lines' | 'additions'>) {
  return lines
    .flatMap((line) => {
      const sum = standingAt(line, additions).reduce((all, each) => all + each.actual_ug, 0);
      const { stage, item_kind, item_id } = line;
      return sum > 0 ? [{ stage, item_kind, item_id, grams: gramsText(sum) }] : [];
    })
    .map((line, position) => ({ revision_id: revisionId, position, ...line }));
}
