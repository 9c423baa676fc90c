import {
  findFormula,
  giveUp,
  insertRevision,
  listDecisions,
  listRevisionLines,
  listRevisions,
  type RevisionHead,
  type RevisionParts,
  replaceRevision,
  type Writer,
} from '../../storage/index.ts';
import { changedMeanwhile, record, thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { judgeRevision } from './judge-revision.ts';
import { type RevisionDetails, viewRevision } from './revision-view.ts';

/** Writes the draft anew where no batch used it; where one did, the next revision begins, and the used one stays. */
export const saveRevision: UseCase<'saveRevision'> = (context, { body, params }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const formula = await findFormula(tx, params.id ?? '');
      if (!formula) giveUp(thingNotFound('id', params.id ?? ''));
      const latest = (await listRevisions(tx, formula.id)).at(-1);
      if ((latest?.version ?? null) !== body.version)
        giveUp(await writtenMeanwhile(tx, body.version, latest));
      const problems = await judgeRevision(tx, formula, body.details);
      if (problems.length > 0) giveUp(...problems);
      // A decision is about what stood there: a draft that somebody decided on is not rewritten under it.
      const isNext = latest === undefined || latest.is_fixed || (await hasDecisions(tx, latest.id));
      const id = isNext ? context.machine.newId() : latest.id;
      const number = isNext ? (latest?.number ?? 0) + 1 : latest.number;
      await tell({
        kind: isNext ? 'revision-added' : 'revision-changed',
        subjectKind: 'revision',
        subjectId: id,
        payload: { formulaId: formula.id, number, details: body.details },
      });
      const { lines: _lines, steps: _steps, ...rest } = body.details;
      // Versions go on counting from revision to revision, so that a page that saw an earlier one is told.
      const version = (latest?.version ?? 0) + 1;
      const row = { id, formula_id: formula.id, number, details: JSON.stringify(rest), version };
      const parts = partsOf(id, body.details);
      if (isNext) await insertRevision(tx, row, parts);
      else await replaceRevision(tx, row, parts, latest.version);
      return id;
    },
    (id) => viewRevision(context.storage.db, id),
  );

const partsOf = (id: string, { lines, steps }: RevisionDetails): RevisionParts => ({
  lines: lines.map((line, position) => ({
    revision_id: id,
    position,
    stage: line.stage,
    item_kind: line.itemKind,
    item_id: line.itemId,
    grams: line.grams,
  })),
  steps: steps.map((step, position) => ({
    revision_id: id,
    position,
    stage: step.stage,
    kind: step.kind,
    what: step.what,
    least_celsius: step.leastCelsius,
    most_celsius: step.mostCelsius,
    minutes: step.minutes,
    caution: step.caution,
    round_minutes: step.roundMinutes,
    rounds: step.rounds,
    grows_percent: step.growsPercent,
    least_hours: step.leastHours,
    most_hours: step.mostHours,
  })),
});

const hasDecisions = async (tx: Writer, revisionId: string): Promise<boolean> =>
  (await listDecisions(tx, revisionId)).length > 0;

/** Says what the other side wrote, line by line. */
async function writtenMeanwhile(tx: Writer, seen: number | null, latest: RevisionHead | undefined) {
  const lines = latest ? await listRevisionLines(tx, [latest.id]) : [];
  const holds = lines.map((line) => `${line.item_name} ${line.grams} g`).join(', ');
  return changedMeanwhile(`revision ${latest?.number ?? 0}`, seen, latest?.version ?? 0, holds);
}
