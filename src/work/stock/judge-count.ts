import { type Problem, problem } from '../../core/problem.ts';
import { gramsFromMicrograms } from '../../core/quantity/index.ts';
import {
  type LotAtHand,
  listAdditions,
  listBatchLines,
  listScales,
  type ScaleRow,
  type Writer,
} from '../../storage/index.ts';
import { findAllowedYield } from '../making/allowed-yield.ts';
import { amountText } from '../quantity-text.ts';
import { findWorstErrorUg } from '../scale-error.ts';

export interface Count {
  readonly lot: LotAtHand;
  /** By the ledger, at the place that was counted. */
  readonly before: number;
  readonly counted: number;
  /** The person was asked, and it is really more than the ledger has. */
  readonly isGainSure: boolean;
}

/**
 * What is wrong with a count that finds more than the ledger has. More than ever came in of the lot cannot be: another
 * lot was weighed, or the receipt is wrong. Any other gain beyond the scale's worst error is asked about once; pieces
 * have no error.
 */
export async function judgeCount(tx: Writer, count: Count): Promise<Problem | undefined> {
  const { lot, before, counted, isGainSure } = count;
  if (counted <= before) return undefined;
  const slack = lot.unit === 'g' ? findWorstOf(await listScales(tx), counted) : 0;
  const cameIn = await mostEverIn(tx, lot);
  const standing = lot.on_hand - before + counted;
  const parameters = { item: lot.item_name, unit: lot.unit };
  if (standing > cameIn + slack) {
    return problem('count-above-came-in', lot.number, {
      found: amountText(standing, lot.unit),
      allowed: amountText(cameIn, lot.unit),
      parameters,
    });
  }
  const gain = counted - before;
  if (gain <= slack || isGainSure) return undefined;
  return problem('count-gains', lot.number, {
    found: amountText(counted, lot.unit),
    allowed: amountText(before, lot.unit),
    parameters: { ...parameters, gain: amountText(gain, lot.unit) },
  });
}

/** By the worst of the workshop's scales that carries so much: nobody says on which one a tub was weighed. */
function findWorstOf(scales: readonly ScaleRow[], loadUg: number): number {
  const load = gramsFromMicrograms(loadUg);
  const errors = scales
    .filter((scale) => load.lte(scale.capacity_grams))
    .flatMap((scale) => {
      const error = findWorstErrorUg(scale, load);
      return error.ok ? [error.value] : [];
    });
  return Math.max(0, ...errors);
}

/** Of what was made here, not more than was weighed in can be there, whatever was written down as its yield. */
async function mostEverIn(tx: Writer, lot: LotAtHand): Promise<number> {
  if (lot.item_kind !== 'formula' || lot.batch_id === null) return lot.received;
  const lines = await listBatchLines(tx, lot.batch_id);
  const { mostUg } = findAllowedYield(lines, await listAdditions(tx, lot.batch_id));
  return Math.max(lot.received, mostUg);
}
