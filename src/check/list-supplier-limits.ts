import { saying } from '../contract/index.ts';
import type { SupplierLimit } from '../core/safety/index.ts';
import { say } from '../words/index.ts';
import type { MaterialKind, OpenedRevision } from './checked.ts';
import { usesOf } from './uses-of.ts';

/**
 * What suppliers' papers allow of each material in the finished product. The conformity statement of a lot goes before
 * the paper of its material as far as it names every category that the product is used in; for a category that it does
 * not name it says nothing. A base is diluted before it is sold, and papers speak of what is sold.
 */
export function listSupplierLimits({ formula, kinds, details }: OpenedRevision): SupplierLimit[] {
  if (formula.kind === 'base') return [];
  const categories = [...new Set(usesOf(details).map(({ category }) => category))];
  return kinds.flatMap((kind) => limitsOfKind(kind, categories));
}

function limitsOfKind({ materialId, details, lot }: MaterialKind, categories: readonly string[]) {
  const statements = (lot?.details.ifra ?? []).filter(({ category }) => categories.includes(category));
  const ofLot = statements.map(
    (statement): SupplierLimit => ({
      materialId,
      mostPercent: statement.mostPercent,
      source: say(
        saying('ifra-statement', {
          reference: statement.paper ?? lot?.reference ?? '',
          lot: lot?.lotNumber ?? '',
          category: statement.category,
          edition: statement.edition,
        }),
      ),
    }),
  );
  const isWhole = categories.every((category) => statements.some((each) => each.category === category));
  const { supplierMostPercent, supplierPaper } = details;
  return supplierMostPercent === null || isWhole
    ? ofLot
    : [...ofLot, { materialId, mostPercent: supplierMostPercent, source: supplierPaper }];
}
