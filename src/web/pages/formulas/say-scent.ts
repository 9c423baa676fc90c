import type { FoundScent } from '../../../check/index.ts';
import { roundToStep, toText } from '../../../core/quantity/index.ts';
import type { DecidingBound } from '../../../core/safety/index.ts';
import { checkWords, sayDecimal, sayMarkets, scentWords } from '../../../words/index.ts';
import { oilsOf, type ScentDraft } from './scent-draft.ts';
import type { ScentView } from './use-scent.ts';

/** Down to four places: what is shown is never more than what may be. */
export const sayPercent = (percent: NonNullable<FoundScent['percent']>): string =>
  sayDecimal(toText(roundToStep(percent, '0.0001', 'down')));

export const whoseLimit = ({ told }: DecidingBound): string =>
  [told.kind ? checkWords.kinds[told.kind] : '', told.citation ?? '']
    .filter((part) => part !== '')
    .join(', ');

/** The answer in one sentence. */
export function sayScent(scent: ScentView | undefined, draft: ScentDraft): string {
  if (oilsOf(draft).length === 0) return scentWords.none;
  if (!scent) return scentWords.working;
  return scent.found.ok ? sayFound(scent.found.value) : scentWords.none;
}

function sayFound({ verdict, percent, decidedBy, limits }: FoundScent): string {
  if (verdict === 'no-limit-found') return scentWords.noLimit;
  if (verdict === 'over-without') return scentWords.overWithout(limits.map(({ name }) => name).join(', '));
  if (!decidedBy || percent === undefined) return scentWords.none;
  if (verdict === 'prohibited') return scentWords.prohibited(decidedBy.name);
  return `${scentWords.most(sayPercent(percent))}: ${sayDecider(decidedBy)}`;
}

export function sayDecider(bound: DecidingBound): string {
  // The name of a maximum that somebody typed.
  if (bound.name === 'mostPercent') return scentWords.ownMost;
  const about = bound.about ?? [];
  const where = about.length === 0 ? '' : scentWords.where(sayMarkets([...new Set(about)].join(', ')));
  return scentWords.decides(bound.name, whoseLimit(bound), where);
}
