import { done, type Problem, problem, type Result, refused } from '../problem.ts';
import { type Exact, type ExactInput, exact } from '../quantity/index.ts';
import type { AccuracyClass, ScaleTables } from './scale-tables.ts';

export interface ClassedScale {
  readonly accuracyClass: AccuracyClass;
  readonly verificationIntervalGrams: ExactInput;
}

export interface ScaleErrors {
  readonly initialGrams: Exact;
  readonly inServiceGrams: Exact;
  readonly minimumLoadGrams: Exact;
}

/**
 * Largest permissible errors of a verified scale at a load, and its smallest load, in grams.
 *
 * Equation: initial error = 0.5, 1 or 1.5 e by the load counted in e; in service twice that; smallest load by class.
 * Valid range: intervals and loads that the class has; loads are compared with e times the band, not divided.
 * Indications are corrected for rounding before they are compared, so rounding comes on top of these errors.
 * Source: OIML R 76-1 tables 3 and 6; in service: SI 1995/1907 Schedule 2.
 */
export function findScaleErrors(
  { accuracyClass, verificationIntervalGrams }: ClassedScale,
  loadGrams: ExactInput,
  tables: ScaleTables,
): Result<ScaleErrors> {
  const interval = exact(verificationIntervalGrams);
  const load = exact(loadGrams);
  const classRow = tables.accuracyClasses.find(
    ({ accuracyClass: its, verificationIntervalGrams: { from, upTo } }) =>
      its === accuracyClass && interval.gte(from) && (upTo === null || interval.lte(upTo)),
  );
  if (!classRow) return refused(intervalProblem(accuracyClass, interval, tables));
  const bands = tables.initialErrors.filter((row) => row.accuracyClass === accuracyClass);
  const band = bands.find(
    ({ loadInE: { over, upTo }, includesZero }) =>
      (load.gt(interval.times(over)) || (includesZero && load.isZero())) &&
      (upTo === null || load.lte(interval.times(upTo))),
  );
  if (!band) return refused(loadProblem(load, interval, bands.at(-1)?.loadInE.upTo ?? 0));
  const initialGrams = interval.times(band.permissibleErrorInE);
  return done({
    initialGrams,
    inServiceGrams: initialGrams.times(tables.inServiceFactor),
    minimumLoadGrams: interval.times(classRow.minimumLoadInE),
  });
}

function intervalProblem(accuracyClass: AccuracyClass, interval: Exact, tables: ScaleTables): Problem {
  const allowed = tables.accuracyClasses
    .filter((row) => row.accuracyClass === accuracyClass)
    .map(({ verificationIntervalGrams: { from, upTo } }) =>
      upTo === null ? `from ${from}` : `${from} to ${upTo}`,
    );
  return problem('interval-not-of-class', 'verificationIntervalGrams', {
    found: interval.toFixed(),
    allowed: allowed.join(', '),
    parameters: { accuracyClass },
    source: 'OIML R 76-1 table 3',
  });
}

const loadProblem = (load: Exact, interval: Exact, mostInE: number): Problem =>
  problem('load-outside-class', 'loadGrams', {
    found: load.toFixed(),
    allowed: `0 to ${interval.times(mostInE).toFixed()}`,
    source: 'OIML R 76-1 table 6',
  });
