import type { Market, orders } from '../../contract/index.ts';
import { listUsers } from '../../core/formula/index.ts';
import { listLatestRevisions, listProducts, listRevisionLines, type Reader } from '../../storage/index.ts';

export const ALL_MARKETS = ['GB', 'NI', 'EU'] as const satisfies readonly Market[];

export interface SoldIn {
  /** Names of the products that are filled from the formula, or from one that it goes into. */
  readonly products: readonly string[];
  /** Every market that one of them is sold in; none where there is no product. */
  readonly markets: readonly Market[];
}

/** Where a formula ends up on sale. What is withdrawn is not made any more and asks for nothing. */
export async function readSoldIn(db: Reader, formulaId: string): Promise<SoldIn> {
  const users = listUsers(formulaId, await readUses(db));
  const products = (await listProducts(db))
    .map((row) => ({ row, details: JSON.parse(row.details) as orders.ProductDetails }))
    .filter(({ row, details }) => users.includes(row.formula_id) && !details.isWithdrawn);
  const sold = new Set(products.flatMap(({ details }) => details.markets));
  return {
    products: products.map(({ details }) => details.name),
    markets: ALL_MARKETS.filter((market) => sold.has(market)),
  };
}

async function readUses(db: Reader) {
  const latest = await listLatestRevisions(db);
  const lines = await listRevisionLines(
    db,
    latest.map(({ id }) => id),
  );
  return latest.map(({ id, formula_id }) => ({
    formulaId: formula_id,
    baseIds: lines
      .filter((line) => line.revision_id === id && line.item_kind === 'formula')
      .map((line) => line.item_id),
  }));
}
