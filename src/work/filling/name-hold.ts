import type { Check } from './run-shapes.ts';

const BY_DETAIL: Readonly<Record<string, string>> = {
  'check-weighed-over': 'over',
  'check-weighed-below': 'below',
  'check-weighed-unnamed': 'unnamed',
  'check-weighed-opened': 'opened',
  'check-base-revised': 'revised',
  'check-lot-past-when-used': 'dates',
  'check-lot-ends-first': 'dates',
};

const isOfLabel = ({ check }: Check): boolean => check.startsWith('label');

/** What holds a run, in one word for the sentences that say it in few. */
export const nameHold = (check: Check): string =>
  BY_DETAIL[check.detail.code] ?? (isOfLabel(check) ? 'label' : check.check);

/** Not passed, and no new label mends it: such tins are promised to nobody. */
export const isInTins = (check: Check): boolean => !check.isPassed && !isOfLabel(check);

/** What is in the tins before what is on them; in the order of the checks. */
export function sumHolds(
  checks: readonly Check[],
): { readonly held: string; readonly others: number } | null {
  const failing = checks.filter((each) => !each.isPassed);
  const first = failing.find(isInTins) ?? failing[0];
  return first ? { held: nameHold(first), others: failing.length - 1 } : null;
}
