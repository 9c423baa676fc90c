import type { MovementRow } from '../storage/index.ts';
import type { Context } from './context.ts';

type Given = Pick<MovementRow, 'lot_id' | 'place_id' | 'kind' | 'quantity'> & Partial<MovementRow>;

/** A movement of the entry that is being written: only what it is about has to be named. */
export const newMovement = (context: Context, entryId: string, given: Given): MovementRow => ({
  reason: '',
  batch_id: null,
  filling_run_id: null,
  order_line_id: null,
  dispatch_id: null,
  ...given,
  id: context.machine.newId(),
  entry_id: entryId,
});
