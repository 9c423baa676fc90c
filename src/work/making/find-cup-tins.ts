import type { orders, stock } from '../../contract/index.ts';
import {
  type BatchHead,
  findMaterials,
  listBatchTins,
  listProducts,
  type ProductRow,
  type Reader,
} from '../../storage/index.ts';
import { readProductDetails } from '../read-product-details.ts';
import type { CupTin } from './batch-screens.ts';

type Details = orders.ProductDetails;
const detailsOf = (row: ProductRow): Details => readProductDetails(row.details);

/** The tins that a batch is meant for, else those of any product of its formula, where the brim volume is known. */
export async function findCupTins(db: Reader, head: BatchHead): Promise<CupTin[]> {
  const planned = new Set((await listBatchTins(db, head.id)).map((row) => row.product_id));
  const products = (await listProducts(db)).filter((row) => row.formula_id === head.formula_id);
  const meant = planned.size > 0 ? products.filter((row) => planned.has(row.id)) : products;
  const tins = await findMaterials(db, [...new Set(meant.map((row) => detailsOf(row).tinId))]);
  return meant.flatMap((row) => {
    const { name, tinId, declaredGrams } = detailsOf(row);
    const tin = tins.find((each) => each.id === tinId);
    const brimMl = tin && (JSON.parse(tin.details) as stock.MaterialDetails).brimMl;
    return brimMl ? [{ productName: name, brimMl, declaredGrams }] : [];
  });
}
