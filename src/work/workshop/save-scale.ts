import { type Problem, problem } from '../../core/problem.ts';
import { exact } from '../../core/quantity/index.ts';
import {
  findScale,
  giveUp,
  insertScale,
  listScales,
  type ScaleRow,
  updateScale,
} from '../../storage/index.ts';
import { changedMeanwhile, record, thingNotFound, viewId } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';

type Scale = RequestOf<'saveScale'>['body']['scale'];

export const saveScale: UseCase<'saveScale'> = (context, { body: { stamp, scale } }) =>
  record(
    context,
    stamp,
    async (tx, tell) => {
      const current = scale.id === undefined ? undefined : await findScale(tx, scale.id);
      if (scale.id !== undefined && !current) giveUp(thingNotFound('scale.id', scale.id));
      const problems = [...whyUnfit(scale), ...nameProblems(await listScales(tx), scale)];
      if (problems.length > 0) giveUp(...problems);
      const id = current?.id ?? context.machine.newId();
      const row = rowOf(id, scale);
      const { version: _, ...payload } = row;
      await tell({
        kind: current ? 'scale-changed' : 'scale-added',
        subjectKind: 'scale',
        subjectId: id,
        payload,
      });
      if (!current) await insertScale(tx, row);
      else if (scale.version === undefined || !(await updateScale(tx, row, scale.version)))
        giveUp(changedMeanwhile('scale', scale.version, current.version, current.name));
      return id;
    },
    viewId,
  );

const rowOf = (id: string, scale: Scale): ScaleRow => ({
  id,
  name: scale.name,
  capacity_grams: scale.capacityGrams,
  readability_grams: scale.readabilityGrams,
  repeatability_grams: scale.repeatabilityGrams,
  accuracy_class: scale.accuracyClass,
  verification_interval_grams: scale.verificationIntervalGrams,
  version: 1,
});

/**
 * A scale shows its own capacity, and its verification interval e is no finer than what it shows, d: OIML R 76-1:2006,
 * 3.4.2, d < e <= 10 d with an auxiliary indication, e = d without (from memory).
 */
function whyUnfit(scale: Scale): Problem[] {
  const readability = exact(scale.readabilityGrams);
  const interval = scale.verificationIntervalGrams;
  const problems: Problem[] = [];
  if (readability.gt(scale.capacityGrams))
    problems.push(
      problem('readability-above-capacity', 'scale.readabilityGrams', {
        found: scale.readabilityGrams,
        allowed: scale.capacityGrams,
      }),
    );
  if (interval !== null && readability.gt(interval))
    problems.push(
      problem('interval-below-readability', 'scale.verificationIntervalGrams', {
        found: interval,
        allowed: scale.readabilityGrams,
        source: 'OIML R 76-1:2006, 3.4.2',
      }),
    );
  return problems;
}

/** Weighing sheets name scales, so each name stands for one. */
const nameProblems = (scales: readonly ScaleRow[], scale: Scale): Problem[] =>
  scales.some((row) => row.id !== scale.id && row.name.toLowerCase() === scale.name.toLowerCase())
    ? [problem('scale-name-taken', 'scale.name', { found: scale.name })]
    : [];
