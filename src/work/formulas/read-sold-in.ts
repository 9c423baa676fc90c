import type { SoldIn } from '../../check/index.ts';
import type { Market } from '../../contract/index.ts';
import { listUsers } from '../../core/formula/index.ts';
import { listProducts, listRevisionLines, listRevisions, type Reader } from '../../storage/index.ts';
import { readProductDetails } from '../read-product-details.ts';
import { pickInForce } from './revisions-in-force.ts';

export const ALL_MARKETS = ['GB', 'NI', 'EU', 'US'] as const satisfies readonly Market[];

/** Where nothing is made of it yet: the markets whose law the tables hold. The United States are asked for by name. */
const TABLED_MARKETS = ['GB', 'NI', 'EU'] as const satisfies readonly Market[];

/** Where a formula ends up on sale. What is withdrawn is not made any more and asks for nothing. */
export const readSoldIn = async (db: Reader, formulaId: string): Promise<SoldIn> =>
  (await openSoldIn(db))(formulaId);

/** The same for many formulas, with what they are used in read once. */
export async function openSoldIn(db: Reader): Promise<(formulaId: string) => SoldIn> {
  const uses = await readUses(db);
  const sold = (await listProducts(db))
    .map((row) => ({ row, details: readProductDetails(row.details) }))
    .filter(({ details }) => !details.isWithdrawn);
  return (formulaId) => {
    const users = listUsers(formulaId, uses);
    const products = sold.filter(({ row }) => users.includes(row.formula_id));
    const markets = new Set(products.flatMap(({ details }) => details.markets));
    return {
      products: products.map(({ row, details }) => ({ id: row.id, name: details.name })),
      markets: ALL_MARKETS.filter((market) => markets.has(market)),
      scentOnLabel: [...new Set(products.map(({ details }) => details.scentOnLabel))],
    };
  };
}

/** Where nothing is made of it yet, nobody has said where it will be sold. */
export const marketsToJudge = ({ markets }: SoldIn): readonly Market[] =>
  markets.length === 0 ? TABLED_MARKETS : markets;

/** Of each formula the revision in force and the newest, which may be a trial of what will be sold. */
async function readUses(db: Reader) {
  const revisions = await listRevisions(db);
  const inForce = pickInForce(revisions);
  const newest = new Map(revisions.map((head) => [head.formula_id, head]));
  const heads = [...new Map([...inForce, ...newest.values()].map((head) => [head.id, head])).values()];
  const lines = await listRevisionLines(
    db,
    heads.map(({ id }) => id),
  );
  return heads.map(({ id, formula_id }) => ({
    formulaId: formula_id,
    baseIds: lines
      .filter((line) => line.revision_id === id && line.item_kind === 'formula')
      .map((line) => line.item_id),
  }));
}
