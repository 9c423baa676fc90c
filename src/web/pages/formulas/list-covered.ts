import { exact, HUNDRED, toText } from '../../../core/quantity/index.ts';
import type { Formula } from './formula.ts';

export interface Covered {
  readonly materialId: string;
  /** Of the finished product as it is written down today: the least and the most of what the report covers. */
  readonly leastPercent: string;
  readonly mostPercent: string;
}

type Exact = ReturnType<typeof exact>;

/** Percent of each material in a formula, its base taken apart. */
function takeApart(formula: Formula | undefined, all: readonly Formula[], share: Exact): [string, Exact][] {
  return (formula?.latest?.lines ?? []).flatMap((line): [string, Exact][] => {
    const part = exact(line.percent).times(share).div(HUNDRED);
    if (line.itemKind === 'material') return [[line.itemId, part]];
    return takeApart(
      all.find(({ id }) => id === line.itemId),
      all,
      part,
    );
  });
}

function sumUp(parts: readonly [string, Exact][]): Map<string, Exact> {
  const sums = new Map<string, Exact>();
  for (const [id, part] of parts) sums.set(id, part.plus(sums.get(id) ?? 0));
  return sums;
}

/** The materials of what a report covers: of the mixtures, or of the base where it covers that alone. */
export function listCovered(
  all: readonly Formula[],
  {
    baseFormulaId,
    formulaIds,
  }: { readonly baseFormulaId: string | null; readonly formulaIds: readonly string[] },
): Covered[] {
  const covered = formulaIds.length > 0 ? formulaIds : [baseFormulaId];
  const sums = covered
    .map((id) => all.find((formula) => formula.id === id))
    .filter((formula) => formula?.latest)
    .map((formula) => sumUp(takeApart(formula, all, HUNDRED)));
  return [...new Set(sums.flatMap((each) => [...each.keys()]))].map((materialId) => {
    const parts = sums.map((each) => each.get(materialId) ?? exact(0));
    const [first = exact(0)] = parts;
    const least = parts.reduce((one, other) => (other.lt(one) ? other : one), first);
    const most = parts.reduce((one, other) => (other.gt(one) ? other : one), first);
    return { materialId, leastPercent: toText(least), mostPercent: toText(most) };
  });
}

interface Range {
  readonly materialId: string;
  readonly leastPercent: string;
  readonly mostPercent: string;
}

const isTouched = ({ leastPercent, mostPercent }: Range): boolean =>
  leastPercent !== '' || mostPercent !== '';

/** A row for each material that is covered now; what somebody typed stays, whatever is covered. */
export const rowsFor = (ranges: readonly Range[], covered: readonly Covered[]): Range[] => [
  ...ranges.filter(
    (row) =>
      row.materialId !== '' &&
      (isTouched(row) || covered.some(({ materialId }) => materialId === row.materialId)),
  ),
  ...covered
    .filter(({ materialId }) => ranges.every((row) => row.materialId !== materialId))
    .map(({ materialId }) => ({ materialId, leastPercent: '', mostPercent: '' })),
];
