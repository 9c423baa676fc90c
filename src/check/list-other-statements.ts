import type { OpenedRevision } from './checked.ts';
import { usesOf } from './uses-of.ts';

/** A lot's statement that leaves a category open in which the product is used. */
export interface OtherStatement {
  readonly material: string;
  readonly lotNumber: string;
  readonly reference: string;
  /** Categories that it is for. */
  readonly isFor: readonly string[];
  /** Categories that the product is used in, and of which it says nothing. */
  readonly needed: readonly string[];
}

/**
 * Conformity statements of lots that are for other categories than the product's. Each holds for its own category alone
 * (IFRA Standards, guidance on the certificate of conformity): what the supplier allows in the product is not known.
 */
export function listOtherStatements({
  formula,
  kinds,
  details,
}: Pick<OpenedRevision, 'formula' | 'kinds' | 'details'>): OtherStatement[] {
  if (formula.kind === 'base') return [];
  const categories = [...new Set(usesOf(details).map(({ category }) => category))];
  return kinds.flatMap(({ lot, details: { name } }): OtherStatement[] => {
    const isFor = (lot?.details.ifra ?? []).map(({ category }) => category);
    const needed = categories.filter((category) => !isFor.includes(category));
    if (lot === null || isFor.length === 0 || needed.length === 0) return [];
    return [{ material: name, lotNumber: lot.lotNumber, reference: lot.reference, isFor, needed }];
  });
}
