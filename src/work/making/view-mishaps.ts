import type { BatchHead, NamedBatchLine, SignedResize, SignedSpill } from '../../storage/index.ts';
import { gramsText } from '../quantity-text.ts';
import type { BatchView } from './batch-view.ts';

/** How often it was made larger or smaller, each from what it was before. */
export function viewResizes(
  head: BatchHead,
  resizes: readonly SignedResize[],
  lines: readonly NamedBatchLine[],
): BatchView['resizes'] {
  let wasUg = head.begun_ug;
  return resizes
    .filter((row) => !row.is_struck)
    .map((row) => {
      const wasGrams = gramsText(wasUg);
      wasUg = row.planned_ug;
      return {
        entryId: row.entry_id,
        item: lines.find(({ position }) => position === row.position)?.item_name ?? '',
        wasGrams,
        isGrams: gramsText(row.planned_ug),
        reason: row.reason,
        at: row.happened_at,
        by: row.person_name,
      };
    });
}

export const viewSpills = (
  spills: readonly SignedSpill[],
  screens: BatchView['screens'],
): BatchView['spills'] =>
  spills.flatMap((row) => {
    if (row.is_struck) return [];
    const screen = screens.find((each) => each.kind === 'addition' && each.position === row.position);
    return [
      {
        entryId: row.entry_id,
        screen: screen?.screen ?? null,
        item: screen?.kind === 'addition' ? screen.itemName : '',
        lotNumber: row.lot_number,
        grams: gramsText(row.spilt_ug),
        reason: row.reason,
        at: row.happened_at,
        by: row.person_name,
      },
    ];
  });
