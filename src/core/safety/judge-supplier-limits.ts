import type { ExactInput } from '../quantity/index.ts';
import type { FormulaMaterial } from './judge-report.ts';
import { addPercents, compareSums, readPercent, toPercent } from './percent-sum.ts';

/** The most of a material that its supplier's certificate allows in a product of this kind. */
export interface SupplierLimit {
  readonly materialId: string;
  readonly mostPercent: ExactInput;
  /** The certificate. */
  readonly source: string;
}

export interface SupplierVerdict {
  readonly materialId: string;
  readonly name: string;
  readonly kind: 'supplier';
  readonly verdict: 'within' | 'over';
  readonly percent: number;
  readonly limitPercent: number;
  readonly source: string;
}

/** Materials against what their suppliers' certificates allow; the figure itself is allowed. */
export function judgeSupplierLimits(
  materials: readonly FormulaMaterial[],
  limits: readonly SupplierLimit[],
): SupplierVerdict[] {
  return limits.flatMap(({ materialId, mostPercent, source }) => {
    const used = materials.filter((material) => material.materialId === materialId);
    const [first] = used;
    if (first === undefined) return [];
    const percent = addPercents(used.map((material) => readPercent(material.percent)));
    const limit = readPercent(mostPercent);
    return [
      {
        materialId,
        name: first.name,
        kind: 'supplier',
        verdict: compareSums(percent, limit) > 0 ? 'over' : 'within',
        percent: toPercent(percent),
        limitPercent: toPercent(limit),
        source,
      },
    ];
  });
}
