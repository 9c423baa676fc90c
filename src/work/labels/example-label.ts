import { DURABILITY_THRESHOLD_MONTHS } from '../../catalogue/index.ts';
import type { orders } from '../../contract/index.ts';
import { decideBestBefore } from '../../core/label/index.ts';
import type { PiecesFor } from './compose-pieces.ts';

/** As long as a real one, so that what fits here fits there. */
const EXAMPLE_BATCH = 'LOT-0000';

/** As if it were made on this day by this revision; batch and date are examples. */
export function exampleLabel(
  details: orders.ProductDetails,
  revisionId: string,
  made: string,
): Omit<PiecesFor, 'market' | 'design'> {
  const question = { made, months: details.bestBeforeMonths };
  const durability = decideBestBefore(question, DURABILITY_THRESHOLD_MONTHS);
  return {
    details,
    revisionId,
    batchNumber: EXAMPLE_BATCH,
    durability: durability.ok ? durability.value : null,
    isTrial: false,
  };
}
