import type { PositionState } from '../../core/making/index.ts';
import type { BatchLineNow, LotAtHand, ScaleRow, SignedAddition } from '../../storage/index.ts';
import type { RequestOf } from '../use-case.ts';
import { judgeBand } from './batch-screens.ts';
import type { WeighedIn } from './weighed-lookup.ts';

export type AdditionBody = RequestOf<'recordAddition'>['body'];

/** A weighing that is about to be entered, with what stands at its position already. */
export interface Weighing {
  readonly line: BatchLineNow;
  readonly state: PositionState;
  /** What stands of the whole batch, in the order of entry. */
  readonly standing: readonly SignedAddition[];
  readonly lot: LotAtHand;
  /** Whole micrograms. */
  readonly actual: number;
  readonly body: AdditionBody;
  readonly scales: readonly ScaleRow[];
  /** What it was weighed on had failed its check then. */
  readonly isScaleFailed: boolean;
}

/** What was left to weigh; where more than the target is in already, the ledger still wants a figure: the target. */
export const askedUg = ({ line, state }: Pick<Weighing, 'line' | 'state'>): number =>
  state.leftUg || line.target_ug;

/** Of a part that more comes to only too much can be wrong. */
export function bandVerdict({ line, state, actual, body }: Weighing): ReturnType<typeof judgeBand> {
  const verdict = judgeBand(state.inUg + actual, line);
  return body.isPart && verdict === 'low' ? 'inside' : verdict;
}

export const isAsPlanned = (weighing: Weighing): boolean =>
  bandVerdict(weighing) === 'inside' && weighing.lot.id === weighing.line.lot_id;

export const proposedBy = ({ line, lot, actual, body }: Weighing): WeighedIn => ({
  position: line.position,
  lot_id: lot.id,
  actual_ug: actual,
  isPart: body.isPart,
});
