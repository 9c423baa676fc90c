import { done } from '../../core/problem.ts';
import { listProducts as readProducts } from '../../storage/index.ts';
import { readProductDetails } from '../read-product-details.ts';
import type { UseCase } from '../use-case.ts';

export const listProducts: UseCase<'listProducts'> = async ({ storage }) => {
  const rows = await readProducts(storage.db);
  return done(
    rows.map((row) => ({
      id: row.id,
      version: row.version,
      formulaName: row.formula_name,
      details: readProductDetails(row.details),
    })),
  );
};
