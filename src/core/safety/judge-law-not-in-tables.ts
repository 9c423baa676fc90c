import type { Composition } from './compose.ts';
import { type LimitVerdict, tellVerdict } from './limit-verdict.ts';
import type { Market } from './safety-table-rows.ts';
import type { SafetyTables } from './safety-tables.ts';
import type { RuleTold } from './told.ts';

const TOLD: RuleTold = {
  kind: 'law',
  source: 'the law of this market on what a cosmetic may hold: no rule of it is in the tables',
  citation: 'no rule of this market is in the tables',
  ruleId: 'law-not-in-tables',
};

/**
 * Where the tables hold no rule of a market's law, one verdict says so for all that is in the product: unknown, never
 * allowed, and said once instead of for each substance. The United States restrict and prohibit too (21 CFR 700 and the
 * lists of colour additives, state laws): none of that has been gathered.
 */
export function judgeLawNotInTables(
  tables: SafetyTables,
  market: Market,
  { members }: Composition,
): LimitVerdict[] {
  if (tables.lawMarkets.has(market)) return [];
  const names = [...new Set(members.map(({ of }) => of.name))];
  const fromMaterials = [...new Set(members.flatMap(({ of }) => of.fromMaterials ?? []))];
  return [
    tellVerdict(
      {
        name: 'everything in it, by the law there',
        percent: 100,
        members: names,
        ...(fromMaterials.length > 0 && { fromMaterials }),
      },
      { verdict: 'unknown', reason: 'law-not-in-tables' },
      TOLD,
    ),
  ];
}
