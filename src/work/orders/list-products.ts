import type { orders } from '../../contract/index.ts';
import { done } from '../../core/problem.ts';
import { listProducts as readProducts } from '../../storage/index.ts';
import type { UseCase } from '../use-case.ts';

export const listProducts: UseCase<'listProducts'> = async ({ storage }) => {
  const rows = await readProducts(storage.db);
  return done(
    rows.map((row) => ({
      id: row.id,
      version: row.version,
      formulaName: row.formula_name,
      details: JSON.parse(row.details) as orders.ProductDetails,
    })),
  );
};
