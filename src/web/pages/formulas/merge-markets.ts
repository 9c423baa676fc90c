import type { Check } from './check.ts';

type Verdict = Check['markets'][number]['verdicts'][number];

/** A verdict with the markets that it holds in. */
export interface SharedVerdict extends Verdict {
  readonly key: string;
  readonly markets: readonly Check['markets'][number]['market'][];
}

/**
 * What several markets say in the same words stands once. Two rules of one market about one substance stay two, however
 * alike.
 */
export function mergeMarkets({ markets }: Pick<Check, 'markets'>): SharedVerdict[] {
  const shared = new Map<string, SharedVerdict>();
  for (const { market, verdicts } of markets) {
    const seen = new Map<string, number>();
    for (const verdict of verdicts) {
      const said = JSON.stringify(verdict);
      const nth = seen.get(said) ?? 0;
      seen.set(said, nth + 1);
      const key = `${said}#${nth}`;
      const known = shared.get(key);
      shared.set(key, { ...verdict, key, markets: [...(known?.markets ?? []), market] });
    }
  }
  return [...shared.values()];
}
