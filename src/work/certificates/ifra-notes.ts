import type { CertifiedLot } from '../../check/index.ts';
import type { formulas, Saying } from '../../contract/index.ts';
import { type Exact, toText } from '../../core/quantity/index.ts';
import { cutPercent } from '../../words/index.ts';
import { saying } from '../saying.ts';

type Statement = Pick<CertifiedLot, 'reference' | 'details' | 'lotNumber'>;

/** A formula that the material goes into, and how much of the whole it is there. */
interface Holder {
  readonly name: string;
  readonly percent: Exact;
}

/**
 * A conformity statement holds for the category that it names and for no other. For each use of the product: whether
 * what it allows is kept to, or which category it is for and which one is needed.
 */
export function ifraNotes(
  { reference, details, lotNumber: lot }: Statement,
  uses: readonly Pick<formulas.ProductUse, 'category'>[],
  { name: formula, percent }: Holder,
): Saying[] {
  if (details.ifra.length === 0) return [];
  const needed = [...new Set(uses.map(({ category }) => category))];
  return needed.map((category) => {
    const statement = details.ifra.find((each) => each.category === category);
    const facts = { reference, lot, formula, category };
    if (!statement) {
      const isFor = details.ifra.map((each) => each.category).join(', ');
      return saying('ifra-statement-of-other', { ...facts, isFor });
    }
    const { paper = reference, mostPercent, edition } = statement;
    const isOver = percent.gt(mostPercent);
    return saying(isOver ? 'ifra-statement-exceeded' : 'ifra-statement-counts', {
      ...facts,
      reference: paper,
      mostPercent,
      edition,
      percent: cutPercent(toText(percent), [mostPercent]),
    });
  });
}
