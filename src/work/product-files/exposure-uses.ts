import { type OpenedRevision, usesOf } from '../../check/index.ts';
import { type ExposureProductType, exposureParameters } from '../../reference/index.ts';
import { exposureOfProductType, findExposureType } from './exposure-basis.ts';

/** All that somebody gets of one product: its uses add up, and a child is more skin to less weight. */
export interface ExposureUses {
  /** Rows of the exposure table, one for each use that it has one for; none: nothing can be worked out. */
  readonly types: readonly ExposureProductType[];
  /** Product types that the product is used as and that the table has no row for. */
  readonly missing: readonly string[];
  readonly child: ChildFactor | null;
}

export interface ChildFactor {
  readonly months: number;
  /** So many times the skin of an adult for each kilogram. */
  readonly times: number;
}

type Details = OpenedRevision['details'];

/** `chosen`: the row that somebody picked for the first use; '': as the formula's product type says. */
export function exposureUsesOf(details: Details | undefined, chosen = ''): ExposureUses {
  const asked = details ? usesOf(details).map(({ productType }) => productType) : [''];
  const rows = asked.map((productType, index) => ({
    productType,
    type: index === 0 && chosen !== '' ? findExposureType(chosen) : exposureOfProductType(productType),
  }));
  // Without the first nothing is worked out: the others alone would be too little.
  const known = rows[0]?.type === undefined ? [] : rows.flatMap(({ type }) => type ?? []);
  return {
    types: [...new Map(known.map((type) => [type.id, type])).values()],
    missing: rows.flatMap(({ productType, type }) => (type ? [] : [productType])),
    child: childFactor(details ? youngestMonths(details) : null),
  };
}

/** Category 5D is for babies, whatever else was said. */
const youngestMonths = (details: Details): number | null =>
  usesOf(details).some(({ category }) => category === '5D') ? 0 : details.minAgeMonths;

const ADULT_MONTHS = 18 * 12;

/** Skin to weight of a child against an adult, by the age from which each figure holds. */
const CHILD_ROWS = [
  ['birth', 0],
  ['6-months', 6],
  ['12-months', 12],
  ['5-years', 60],
  ['10-years', 120],
] as const;

/**
 * The ratio of the youngest age at which the product is meant to be used; null: it is for adults, or nobody has said so.
 * Source: SCCS Notes of Guidance, 12th revision, ratio of skin area to weight of a child to that of an adult (from memory).
 */
function childFactor(months: number | null): ChildFactor | null {
  if (months === null || months >= ADULT_MONTHS) return null;
  const [age] = CHILD_ROWS.filter(([, from]) => from <= months).at(-1) ?? CHILD_ROWS[0];
  const row = exposureParameters.find(({ id }) => id === `skin-area-to-weight-ratio-child-vs-adult-${age}`);
  if (!row) throw new Error(`the exposure table has no ratio for ${age}`);
  return { months, times: Number(row.value) };
}
