import type { CertifiedLot } from '../../check/index.ts';
import { exact, largest, smallest, toText } from '../../core/quantity/index.ts';

type Details = CertifiedLot['details'];
type Constituent = Details['constituents'][number];

const keyOf = ({ name, cas }: Constituent): string => `${name.toLowerCase()}|${cas ?? ''}`;

/** What a paper does not list may not be there at all. */
function widestRanges(one: Details, other: Details): Constituent[] {
  const rights = new Map(other.constituents.map((each) => [keyOf(each), each]));
  const lefts = new Map(one.constituents.map((each) => [keyOf(each), each]));
  return [...new Map([...rights, ...lefts])].map(([key, shown]) => {
    const [left, right] = [lefts.get(key), rights.get(key)];
    return {
      ...shown,
      leastPercent: toText(smallest(exact(left?.leastPercent ?? 0), exact(right?.leastPercent ?? 0))),
      mostPercent: toText(largest(exact(left?.mostPercent ?? 0), exact(right?.mostPercent ?? 0))),
    };
  });
}

function higherPeroxide({ peroxide: one }: Details, { peroxide: other }: Details): Details['peroxide'] {
  if (one === null || other === null) return null;
  return exact(one.mmolPerLitre).gt(other.mmolPerLitre) ? one : other;
}

const lowerAllowances = (one: Details, other: Details): Details['ifra'] =>
  one.ifra.flatMap((statement) => {
    const same = other.ifra.find(({ category }) => category === statement.category);
    if (!same) return [];
    return [exact(same.mostPercent).lt(statement.mostPercent) ? same : statement];
  });

/** Whichever of two lots of one material is taken: the widest ranges, the higher peroxide value, the lower allowance. */
export const eitherOf = (one: CertifiedLot, other: CertifiedLot): CertifiedLot => ({
  ...one,
  reference: `${one.reference}, ${other.reference}`,
  lotNumber: `${one.lotNumber}, ${other.lotNumber}`,
  details: {
    ...one.details,
    isComplete: one.details.isComplete && other.details.isComplete,
    constituents: widestRanges(one.details, other.details),
    peroxide: higherPeroxide(one.details, other.details),
    ifra: lowerAllowances(one.details, other.details),
  },
});
