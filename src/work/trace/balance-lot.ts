import type { z } from 'zod';
import type { trace } from '../../contract/index.ts';
import { must } from '../../core/problem.ts';
import { gramsFromMicrograms, toText } from '../../core/quantity/index.ts';
import { balanceMass } from '../../core/stock/index.ts';
import { type LotAtHand, type Reader, sumByKind } from '../../storage/index.ts';

export type BalanceView = z.output<typeof trace.massBalanceView>;

/** What leaves a lot without going into anything made. */
const WASTE = ['binned', 'broken', 'tester', 'gift', 'own-use'];

/**
 * Mass balance of one lot from its movements: what came in against what was used, stands anywhere (retained samples
 * too) or went to waste. Differences found by counting are what is unexplained. Pieces have no mass balance.
 */
export async function balanceLot(db: Reader, lot: LotAtHand): Promise<BalanceView | null> {
  if (lot.unit !== 'g' || lot.received <= 0) return null;
  const sums = await sumByKind(db, lot.id);
  const of = (kind: string): number => sums.get(kind) ?? 0;
  const account = {
    receivedGrams: gramsFromMicrograms(lot.received),
    usedGrams: [gramsFromMicrograms(-(of('used') + of('returned')))],
    onHandGrams: gramsFromMicrograms([...sums.values()].reduce((total, sum) => total + sum, 0)),
    wasteGrams: gramsFromMicrograms(-WASTE.reduce((total, kind) => total + of(kind), 0)),
  };
  const balance = must(balanceMass(account));
  return {
    receivedGrams: toText(account.receivedGrams),
    usedGrams: toText(account.usedGrams[0] ?? account.wasteGrams),
    onHandGrams: toText(account.onHandGrams),
    wasteGrams: toText(account.wasteGrams),
    accountedGrams: toText(balance.accountedGrams),
    unexplainedGrams: toText(balance.unexplainedGrams),
    percent: balance.percent.toNumber(),
    verdict: balance.verdict,
  };
}
