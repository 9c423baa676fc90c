import { marketKeysOf } from '../../../check/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';

type Former = AnswerOf<'listFormerDecisions'>;

/** What was decided on the same question of earlier revisions, once however many markets it was for. */
export function findFormer({ key }: { readonly key: string }, former: Former): Former {
  const keys = marketKeysOf(key);
  const own = former.filter(({ marketKey }) => keys.includes(marketKey));
  return own.filter((row, index) => own.findIndex(({ entryId }) => entryId === row.entryId) === index);
}
