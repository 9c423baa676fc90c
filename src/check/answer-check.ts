import type { ToldReason } from './list-reasons.ts';

export type SaleAnswer = 'yes' | 'no' | 'decide';

/** What stops it decides; then what somebody still has to decide. */
export function answerOf(reasons: readonly ToldReason[]): SaleAnswer {
  if (reasons.some((reason) => reason.blocks === 'yes')) return 'no';
  return reasons.some((reason) => reason.blocks === 'until-decided') ? 'decide' : 'yes';
}
