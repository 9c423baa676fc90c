import type { CheckedVerdict } from '../core/safety/index.ts';
import type { Checked } from './checked.ts';

/** A paper may say that there is none of it; of what no paper gives the amount there may be some. */
const isIn = ({ percent, reason }: CheckedVerdict): boolean => percent > 0 || reason === 'amount-not-known';

/** What law has on the label word for word because of what is in it (Annex III, column i), each once. */
export const listWarnings = ({ groups }: Pick<Checked, 'groups'>): string[] => [
  ...new Set(
    groups.flatMap(({ answer }) =>
      answer.markets.flatMap(({ verdicts }) => verdicts.filter(isIn).flatMap(({ warning }) => warning ?? [])),
    ),
  ),
];
