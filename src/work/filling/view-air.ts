import type { stock } from '../../contract/index.ts';
import { findMaterials, listBatchSteps, type Reader } from '../../storage/index.ts';
import { findFillSpread } from '../find-fill-spread.ts';
import { listCups } from '../list-cups.ts';
import type { RunRecords } from './run-records.ts';
import type { RunView } from './run-shapes.ts';

const WHIPPED: readonly string[] = ['whip', 'cup'];

/** What its first tins are judged by where the mixture was whipped; null: it was not, or nobody measured what the tin holds. */
export async function viewAir(db: Reader, { head, details }: RunRecords): Promise<RunView['air']> {
  const steps = await listBatchSteps(db, head.batch_id);
  if (!steps.some(({ kind }) => WHIPPED.includes(kind))) return null;
  const [tin] = await findMaterials(db, [details.tinId]);
  const { brimMl } = tin ? (JSON.parse(tin.details) as stock.MaterialDetails) : { brimMl: null };
  if (brimMl === null) return null;
  const cups = await listCups(db, [head.batch_id]);
  return {
    brimMl,
    headspacePercent: details.headspacePercent,
    lossPercent: details.bowlLossPercent,
    spread: await findFillSpread(db, head.product_id),
    cups: cups.filter(({ isFinal }) => isFinal).flatMap((each) => each.cups),
  };
}
