import type { z } from 'zod';
import type { formulas } from '../../contract/index.ts';
import { percentFromGrams } from '../../core/formula/index.ts';
import { done, must, type Result, refused } from '../../core/problem.ts';
import { sumOf, toText } from '../../core/quantity/index.ts';
import {
  findRevision,
  listRevisionLines,
  listRevisionSteps,
  type NamedRevisionLine,
  type Reader,
  type RevisionHead,
  type RevisionStepRow,
} from '../../storage/index.ts';
import { thingNotFound } from '../record.ts';
import { formulaLinesOf } from './formula-lines.ts';

export type RevisionView = z.output<typeof formulas.revisionView>;
export type RevisionDetails = formulas.RevisionDetails;

export async function viewRevision(db: Reader, id: string): Promise<Result<RevisionView>> {
  const head = await findRevision(db, id);
  const [view] = head ? await viewRevisions(db, [head]) : [];
  return view ? done(view) : refused(thingNotFound('id', id));
}

/** Revisions in grams and percent: two queries however many there are. */
export async function viewRevisions(db: Reader, heads: readonly RevisionHead[]): Promise<RevisionView[]> {
  const ids = heads.map((head) => head.id);
  const lines = await listRevisionLines(db, ids);
  const steps = await listRevisionSteps(db, ids);
  return heads.map((head) =>
    viewOne(
      head,
      lines.filter((line) => line.revision_id === head.id),
      steps.filter((step) => step.revision_id === head.id),
    ),
  );
}

function viewOne(
  head: RevisionHead,
  lines: readonly NamedRevisionLine[],
  steps: readonly RevisionStepRow[],
): RevisionView {
  // What is kept was read before it was kept, so that it can be read again.
  const percents = must(percentFromGrams(formulaLinesOf(lines)));
  const shown = lines.map((line, index) => ({
    ...viewLine(line),
    itemName: line.item_name,
    percent: percents.lines[index]?.shownPercent ?? '',
  }));
  return {
    id: head.id,
    formulaId: head.formula_id,
    number: head.number,
    version: head.version,
    isFixed: head.is_fixed,
    details: {
      ...readDetails(head),
      lines: lines.map(viewLine),
      steps: steps.map(viewStep),
    },
    totalGrams: toText(percents.totalGrams),
    lines: shown,
    stages: viewStages(shown),
  };
}

/** A revision that was written before a product could have several uses has one. */
function readDetails({ details }: RevisionHead): Omit<RevisionDetails, 'lines' | 'steps'> {
  const kept = JSON.parse(details) as Omit<RevisionDetails, 'lines' | 'steps' | 'alsoUsedAs'>;
  return { alsoUsedAs: [], ...kept };
}

const viewLine = (line: NamedRevisionLine): RevisionDetails['lines'][number] => ({
  stage: line.stage,
  itemKind: line.item_kind as 'material' | 'formula',
  itemId: line.item_id,
  grams: line.grams,
});

const viewStep = (step: RevisionStepRow): RevisionDetails['steps'][number] => ({
  stage: step.stage,
  kind: step.kind as RevisionDetails['steps'][number]['kind'],
  what: step.what,
  leastCelsius: step.least_celsius,
  mostCelsius: step.most_celsius,
  minutes: step.minutes,
  caution: step.caution,
  roundMinutes: step.round_minutes,
  rounds: step.rounds,
  growsPercent: step.grows_percent,
  leastHours: step.least_hours,
  mostHours: step.most_hours,
});

/** Stages as a column of their own: each share is that of its grams. */
function viewStages(lines: RevisionView['lines']): RevisionView['stages'] {
  const stages = [...new Set(lines.map((line) => line.stage))].map((name) => ({
    name,
    grams: toText(sumOf(lines.filter((line) => line.stage === name).map((line) => line.grams))),
  }));
  const shares = percentFromGrams(
    stages.map(({ name, grams }) => ({
      key: name,
      stage: name,
      item: { kind: 'material', id: name },
      grams,
    })),
  );
  return must(shares).lines.map(({ stage, grams, shownPercent }) => ({
    name: stage,
    percent: shownPercent,
    grams,
  }));
}
