import { type Problem, problem } from '../../core/problem.ts';
import { exact } from '../../core/quantity/index.ts';
import {
  findScale,
  giveUp,
  insertScale,
  listScales,
  type ScaleRow,
  type ScaleThing,
  updateScale,
} from '../../storage/index.ts';
import { changedMeanwhile, record, thingNotFound, viewId } from '../record.ts';
import { isHeld } from '../scale-error.ts';
import type { RequestOf, UseCase } from '../use-case.ts';

type Scale = RequestOf<'saveScale'>['body']['scale'];

export const saveScale: UseCase<'saveScale'> = (context, { body: { stamp, scale } }) =>
  record(
    context,
    stamp,
    async (tx, tell) => {
      const current = scale.id === undefined ? undefined : await findScale(tx, scale.id);
      if (scale.id !== undefined && !current) giveUp(thingNotFound('scale.id', scale.id));
      const problems = [
        ...whyUnfit(scale),
        ...nameProblems(await listScales(tx), scale),
        ...heldProblems(scale, current),
      ];
      if (problems.length > 0) giveUp(...problems);
      const id = current?.id ?? context.machine.newId();
      const row = rowOf(id, scale, current, stamp.at);
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

/** What is left out of a change stays as it was; a repeatability that is typed anew counts from then on. */
const rowOf = (id: string, scale: Scale, current: ScaleRow | undefined, at: string): ScaleThing => {
  const isAnew = current === undefined || scale.repeatabilityGrams !== current.repeatability_grams;
  return {
    id,
    name: scale.name,
    capacity_grams: scale.capacityGrams,
    readability_grams: scale.readabilityGrams,
    repeatability_grams: scale.repeatabilityGrams,
    accuracy_class: scale.accuracyClass,
    verification_interval_grams: scale.verificationIntervalGrams,
    check_weight_grams: orAsBefore(scale.checkWeightGrams, current?.check_weight_grams),
    check_tolerance_grams: orAsBefore(scale.checkToleranceGrams, current?.check_tolerance_grams),
    repeatability_at: isAnew ? at : current.repeatability_at,
    version: 1,
  };
};

const orAsBefore = (said: string | null | undefined, before: string | null | undefined): string | null =>
  said === undefined ? (before ?? null) : said;

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
  if (scale.checkWeightGrams != null && exact(scale.checkWeightGrams).gt(scale.capacityGrams))
    problems.push(
      problem('check-weight-too-heavy', 'scale.checkWeightGrams', {
        found: scale.checkWeightGrams,
        allowed: scale.capacityGrams,
        parameters: { scale: scale.name },
      }),
    );
  return problems;
}

/** Weighing sheets name scales, so each name stands for one. */
const nameProblems = (scales: readonly ScaleRow[], scale: Scale): Problem[] =>
  scales.some((row) => row.id !== scale.id && row.name.toLowerCase() === scale.name.toLowerCase())
    ? [problem('scale-name-taken', 'scale.name', { found: scale.name })]
    : [];

/**
 * A scale that did not pass is free again once it passes with what it failed with: another weight, a wider tolerance, or
 * another step or class, by which the limit of the check is worked out, would let it pass without having become right.
 */
function heldProblems(scale: Scale, current: ScaleRow | undefined): Problem[] {
  if (!current || !isHeld(current)) return [];
  const facts = [
    ['checkWeightGrams', scale.checkWeightGrams, current.check_weight_grams],
    ['checkToleranceGrams', scale.checkToleranceGrams, current.check_tolerance_grams],
    ['readabilityGrams', scale.readabilityGrams, current.readability_grams],
    ['repeatabilityGrams', scale.repeatabilityGrams, current.repeatability_grams],
    ['verificationIntervalGrams', scale.verificationIntervalGrams, current.verification_interval_grams],
    ['accuracyClass', scale.accuracyClass, current.accuracy_class],
  ] as const;
  return facts
    .filter(([, said, before]) => said !== undefined && before !== null && !isSame(said, before))
    .map(([name]) => problem('held-scale-keeps-weight', `scale.${name}`, { found: current.name }));
}

/** Of figures the figure, of a class its name. */
const isSame = (said: string | null, before: string): boolean =>
  said !== null && (said === before || (/^[\d.]+$/.test(said + before) && exact(said).eq(before)));
