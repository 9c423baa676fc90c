import type { OpenedRevision } from '../../check/index.ts';
import type { productFiles } from '../../contract/index.ts';
import { type Exact, exact, sumOf, ZERO } from '../../core/quantity/index.ts';
import { findExposureMgPerKgDay, judgeMarginOfSafety, normaliseName } from '../../core/safety/index.ts';
import type { ExposureProductType } from '../../reference/index.ts';
import { ABSORPTION, BIOAVAILABILITY, isSwallowed, LEAST_MARGIN } from './exposure-basis.ts';
import type { ExposureUses } from './exposure-uses.ts';

export interface ExposedSubstance {
  readonly name: string;
  readonly cas: string | null;
  readonly mostPercent: Exact;
  /** Nobody has seen the page that its amount stands on. */
  readonly isRemembered: boolean;
  readonly fromMaterials: readonly string[];
  readonly exposureMgPerKgDay: Exact;
  readonly point: productFiles.PointOfDeparture | null;
  /** null: without a point of departure, or without exposure, there is none. */
  readonly marginOfSafety: Exact | null;
  readonly isEnough: boolean | null;
}

type Substance = Pick<ExposedSubstance, 'name' | 'cas' | 'mostPercent' | 'isRemembered' | 'fromMaterials'>;

/** What comes in with several materials counts once, with all of it: the most that each may bring. */
export function listSubstances({ contributions }: Pick<OpenedRevision, 'contributions'>): Substance[] {
  const found = new Map<string, Substance>();
  for (const one of contributions) {
    const key = normaliseName(one.name);
    const known = found.get(key);
    found.set(key, {
      name: known?.name ?? one.name,
      cas: known?.cas ?? one.cas ?? null,
      mostPercent: (known?.mostPercent ?? ZERO).plus(one.mostPercent.toExact()),
      isRemembered: (known?.isRemembered ?? false) || one.confidence === 'memory',
      fromMaterials: [...new Set([...(known?.fromMaterials ?? []), ...one.fromMaterials])],
    });
  }
  return [...found.values()].sort(
    (one, other) => other.mostPercent.cmp(one.mostPercent) || one.name.localeCompare(other.name),
  );
}

/**
 * Exposure to each substance on the most that may be in it, by all uses of the product together, and the margin of safety
 * where somebody typed a point of departure in: 1 / margin = sum of 1 / margin of each use. Absorption and bioavailability by the Notes' defaults unless a figure was typed.
 */
export function exposeSubstances(
  opened: Pick<OpenedRevision, 'contributions'>,
  uses: Pick<ExposureUses, 'types' | 'child'>,
  points: readonly productFiles.PointOfDeparture[],
): ExposedSubstance[] {
  const byName = new Map(points.map((point) => [normaliseName(point.name), point]));
  return listSubstances(opened).map((substance) =>
    exposeOne(substance, uses, byName.get(normaliseName(substance.name)) ?? null),
  );
}

function exposeOne(
  substance: Substance,
  { types, child }: Pick<ExposureUses, 'types' | 'child'>,
  point: productFiles.PointOfDeparture | null,
): ExposedSubstance {
  const bioavailability = point?.bioavailabilityPercent ?? String(BIOAVAILABILITY.value);
  const absorptionOf = (type: ExposureProductType): string =>
    isSwallowed(type) ? bioavailability : (point?.absorptionPercent ?? String(ABSORPTION.value));
  const exposureMgPerKgDay = sumOf(
    types.map((type) =>
      findExposureMgPerKgDay({
        relativeExposureMgPerKgDay: type.relativeExposureMgPerKgDay,
        percent: substance.mostPercent,
        absorptionPercent: absorptionOf(type),
      }),
    ),
  );
  const margin =
    point &&
    judgeMarginOfSafety({
      exposureMgPerKgDay,
      pointOfDepartureMgPerKgDay: point.milligramsPerKgDay,
      bioavailabilityPercent: point.route === 'systemic' ? 100 : bioavailability,
      minimum: LEAST_MARGIN.value,
    });
  return {
    ...substance,
    exposureMgPerKgDay,
    point,
    marginOfSafety: margin?.marginOfSafety ?? null,
    // An adult's figure never says that it is enough for a child.
    isEnough: margin?.isEnough && child !== null ? null : (margin?.isEnough ?? null),
  };
}

const SHOWN_DIGITS = 4;
const DOWN = 1;

/** Four digits for reading; what is judged is the exact figure. */
export const shownFigure = (value: Exact): string => exact(value).toSignificantDigits(SHOWN_DIGITS).toFixed();

/** Never rounded up: 99.996 is not a hundred. */
export const shownMargin = (value: Exact): string =>
  exact(value).toSignificantDigits(SHOWN_DIGITS, DOWN).toFixed();
