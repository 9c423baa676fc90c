import type { complaints } from '../../contract/index.ts';
import type { TellingRule } from '../../core/product-file/index.ts';
import { labelRule, sourceTitle } from '../product-files/label-rule.ts';

type Market = TellingRule['market'];

const ROWS: Readonly<Record<Market, string>> = {
  GB: 'sue-gb',
  NI: 'sue-eu',
  EU: 'sue-eu',
  US: 'us-sae',
};

/** A number of days that nobody has seen printed makes the whole line one to check. */
function ruleOf(market: Market): TellingRule {
  const { rule, days, businessDays, confidence, source, evidence } = labelRule(ROWS[market]);
  return {
    market,
    rule,
    ...(days !== undefined && { days }),
    ...(businessDays !== undefined && { businessDays }),
    confidence: evidence?.days?.confidence ?? confidence,
    source: sourceTitle(source),
  };
}

/** Whom a serious effect is told: where it happened, or, where nobody knows, wherever the product is sold. */
export function tellingRules(
  happenedIn: complaints.ComplaintDetails['happenedIn'],
  soldIn: readonly string[],
): TellingRule[] {
  if (happenedIn === 'elsewhere') return [];
  if (happenedIn !== null) return [ruleOf(happenedIn)];
  const markets = Object.keys(ROWS) as Market[];
  return markets.filter((market) => soldIn.includes(market)).map(ruleOf);
}
