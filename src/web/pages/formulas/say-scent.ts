import type { FoundScent } from '../../../check/index.ts';
import type { Result } from '../../../core/problem.ts';
import { type Exact, exact, percentPlaces, roundToStep, toText } from '../../../core/quantity/index.ts';
import type { DecidingBound, ScentLimit } from '../../../core/safety/index.ts';
import { checkWords, sayDecimal, sayMarkets, scentWords } from '../../../words/index.ts';
import { hasScent, type ScentDraft } from './scent-draft.ts';
import type { ScentView } from './use-scent.ts';

/** With the same places each, rounded down: what is shown is never more than what may be. */
export function sayPercents(percents: readonly Exact[]): string[] {
  const places = Math.max(...percents.filter((percent) => !percent.isZero()).map(percentPlaces), 0);
  return percents.map((percent) =>
    sayDecimal(toText(roundToStep(percent, toText(exact(10).pow(-places)), 'down'), places)),
  );
}

export const sayPercent = (percent: Exact): string => sayPercents([percent])[0] ?? '';

export const whoseLimit = ({ told }: DecidingBound): string =>
  [told.kind ? checkWords.kinds[told.kind] : '', told.citation ?? '']
    .filter((part) => part !== '')
    .join(', ');

/** A maximum that somebody typed has no name of its own. */
export const nameOfBound = ({ name }: DecidingBound): string =>
  name === 'mostPercent' ? scentWords.ownLimit : name;

/** The answer in one sentence. */
export function sayScent(scent: Result<ScentView> | undefined, draft: ScentDraft): string {
  if (!hasScent(draft)) return scentWords.none;
  if (!scent) return scentWords.working;
  return scent.ok ? sayFound(scent.value.found) : scentWords.notNow(scent.problems.length);
}

function sayFound({ verdict, percent, decidedBy, limits }: FoundScent): string {
  if (verdict === 'no-limit-found') return scentWords.noLimit;
  if (verdict === 'over-without') return scentWords.overWithout(limits.map(nameOfBound).join(', '));
  if (!decidedBy || percent === undefined) return scentWords.noLimit;
  if (verdict === 'prohibited') return scentWords.prohibited(nameOfBound(decidedBy));
  const also = listAlsoMet(limits, decidedBy);
  return [
    `${scentWords.most(sayPercent(percent))}: ${sayDecider(decidedBy)}`,
    ...(also.length > 0 ? [scentWords.alsoMet(also)] : []),
  ].join(' ');
}

/** What is at its limit as well, though it is not what decides. */
const listAlsoMet = (limits: readonly ScentLimit[], { name }: DecidingBound): string[] => [
  ...new Set(
    limits
      .filter((limit) => isMet(limit) && limit.name !== name && limit.leastPercent === undefined)
      .map(nameOfBound),
  ),
];

/** One step of the twelfth place below a limit that has to be undercut is as much as may be, too. */
export const isMet = ({ shareOfLimit }: ScentLimit): boolean => shareOfLimit > 1 - 1e-9;

function sayDecider(bound: DecidingBound): string {
  if (bound.name === 'mostPercent') return scentWords.ownMost;
  const { leastPercent } = bound;
  if (leastPercent !== undefined)
    return scentWords.leastDecides(bound.name, sayDecimal(leastPercent), whoseLimit(bound));
  const about = bound.about ?? [];
  const where = about.length === 0 ? '' : scentWords.where(sayMarkets([...new Set(about)].join(', ')));
  return scentWords.decides(bound.name, whoseLimit(bound), where);
}

/** What it would be without what decides now. */
export function sayRelief({ relief, decidedBy }: FoundScent): string {
  if (!relief || !decidedBy) return scentWords.reliefNone;
  const { percent, decidedBy: next } = relief;
  return scentWords.relief(
    nameOfBound(decidedBy),
    sayPercent(percent),
    next.leastPercent === undefined
      ? scentWords.nextDecides(nameOfBound(next), whoseLimit(next))
      : scentWords.nextLeast(next.name, sayDecimal(next.leastPercent), whoseLimit(next)),
  );
}

/** How close a limit is with the scent that was found. */
export function sayCloseness(limit: ScentLimit, percent: Exact): string {
  const { leastPercent, shareOfLimit, name } = limit;
  if (leastPercent !== undefined)
    return scentWords.least(name, sayPercent(percent.div(shareOfLimit)), sayDecimal(leastPercent));
  if (isMet(limit)) return scentWords.met;
  return checkWords.shareOfLimit(sayDecimal(exact(shareOfLimit).times(100).toFixed(1)));
}
