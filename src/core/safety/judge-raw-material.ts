import { type ExactInput, exact } from '../quantity/index.ts';
import type { Judged } from './limit-verdict.ts';

/** One lot, or a material of which no lot is chosen, as far as a paper measures it before it goes in. */
export interface RawMaterialFigures {
  /** As `fromMaterials` of a contribution names it. */
  readonly name: string;
  readonly lot?: string;
  /** Absent: no paper gives it. */
  readonly peroxideMmolPerLitre?: ExactInput;
}

export interface PeroxideRule {
  readonly limitValue: number;
  /** The value must lie below the limit; else the limit itself is allowed. */
  readonly isStrict: boolean;
}

const open = (limitValue: number): Judged => ({
  limitValue,
  limitUnit: 'mmol-per-litre',
  verdict: 'unknown',
  reason: 'needs-certificate',
});

/**
 * A limit of the peroxide value, in mmol of peroxide in a litre, on what went in (Regulation (EC) No 1223/2009, Annex
 * III, entries of oils of fir, pine and spruce and of terpenes; IFRA Standard on limonene). Judged lot by lot: one that
 * is over is over, whatever it is diluted with; one without a measured value leaves the question open. A natural
 * material's value answers for what it brings in.
 */
export function judgePeroxide(
  { limitValue, isStrict }: PeroxideRule,
  fromMaterials: readonly string[],
  figures: readonly RawMaterialFigures[],
): Judged {
  const used = figures.filter(({ name }) => fromMaterials.includes(name));
  const isOver = ({ peroxideMmolPerLitre: value }: RawMaterialFigures): boolean =>
    value !== undefined && (isStrict ? exact(value).gte(limitValue) : exact(value).gt(limitValue));
  const over = used.filter(isOver);
  const [worst] = over.toSorted((one, other) =>
    exact(other.peroxideMmolPerLitre ?? 0).cmp(one.peroxideMmolPerLitre ?? 0),
  );
  if (worst?.peroxideMmolPerLitre !== undefined)
    return {
      limitValue,
      limitUnit: 'mmol-per-litre',
      verdict: 'over',
      foundValue: exact(worst.peroxideMmolPerLitre).toString(),
      ofLots: over.flatMap(({ lot }) => lot ?? []),
    };
  const isAnswered =
    fromMaterials.length > 0 &&
    fromMaterials.every((name) => used.some((each) => each.name === name)) &&
    used.every((each) => each.peroxideMmolPerLitre !== undefined);
  return isAnswered ? { limitValue, limitUnit: 'mmol-per-litre', verdict: 'within' } : open(limitValue);
}
