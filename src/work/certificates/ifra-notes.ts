import type { CertifiedLot } from '../../check/index.ts';
import type { formulas, Saying } from '../../contract/index.ts';
import { saying } from '../saying.ts';

type Statement = Pick<CertifiedLot, 'reference' | 'details' | 'lotNumber'>;

/**
 * A conformity statement holds for the category that it names and for no other. For each use of the product: what it
 * allows, or which category it is for and which one is needed.
 */
export function ifraNotes(
  { reference, details, lotNumber: lot }: Statement,
  uses: readonly Pick<formulas.ProductUse, 'category'>[],
  formula: string,
): Saying[] {
  if (details.ifra.length === 0) return [];
  const needed = [...new Set(uses.map(({ category }) => category))];
  return needed.map((category) => {
    const statement = details.ifra.find((each) => each.category === category);
    const facts = { reference, lot, formula, category };
    return statement
      ? saying('ifra-statement-counts', { ...facts, ...statement })
      : saying('ifra-statement-of-other', {
          ...facts,
          isFor: details.ifra.map((each) => each.category).join(', '),
        });
  });
}
