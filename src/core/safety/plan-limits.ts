import { chooseRules, groupComparable, type LimitContext, lowestRule } from './choose-rules.ts';
import { picopercentFrom } from './percent-sum.ts';
import type { RestrictionRow, RestrictionRuleRow } from './safety-table-rows.ts';
import type { LimitPlan, PlannedRule, SafetyTables } from './safety-tables.ts';
import { situationsOf } from './situations.ts';
import type { RuleTold } from './told.ts';

export function tellRule(row: RestrictionRow, rule: RestrictionRuleRow | undefined): RuleTold {
  const { annex, entry } = row;
  const place = [
    annex === undefined ? 'no annex' : `Annex ${annex}`,
    ...(entry === undefined ? [] : [`entry ${entry}`]),
  ];
  const citation = `Regulation (EC) No 1223/2009, ${place.join(', ')}`;
  return {
    kind: 'law',
    ...(entry !== undefined && { entry }),
    source: `${row.name}: ${citation}`,
    citation,
    confidence: rule?.confidence ?? row.confidence,
    ruleId: rule?.id ?? row.id,
    ...(rule?.force !== undefined && { force: rule.force }),
    ...(rule?.asWhat !== undefined && { asWhat: rule.asWhat }),
    ...(rule?.warning !== undefined && { warning: rule.warning }),
    ...(rule?.strict === true && { isStrict: true }),
  };
}

/** What any of its possible situations has on the label stands there, whichever of them has the lower limit. */
const warned = (told: RuleTold, warning: string | undefined): RuleTold =>
  told.warning !== undefined || warning === undefined ? told : { ...told, warning };

function planRule(row: RestrictionRow, rule: RestrictionRuleRow, warning?: string): PlannedRule {
  const { value, unit } = rule;
  const isShare = unit === undefined || unit === 'mg-per-kg';
  const limitPico = isShare ? picopercentFrom(value ?? Number.NaN, unit ?? 'percent') : Number.NaN;
  return { rule, told: warned(tellRule(row, rule), warning), limitPico };
}

/** What a figure may count so that the percentage put in is the figure, or is at least as much as it. */
export const COUNTED_AS_PUT_IN = new Set(['cumin oil', 'furocoumarins in total', 'trace from ingredients']);
export const LESS_THAN_PUT_IN = new Set(['acid', 'retinol equivalents', 'zinc', 'phenol', 'etidronic acid']);

function isCountable({ basis, quantity, asWhat, unit }: RestrictionRuleRow): boolean {
  const isShare = unit === undefined || unit === 'mg-per-kg';
  const isTold = asWhat === undefined || COUNTED_AS_PUT_IN.has(asWhat) || LESS_THAN_PUT_IN.has(asWhat);
  return basis === undefined && quantity === 'max' && isShare && isTold;
}

const isFinishedLimit = ({ basis, quantity }: RestrictionRuleRow): boolean =>
  basis === undefined && quantity === 'max';

/** Annexes III and V list what products must not contain except as laid down: a use that they do not name is not free. */
function limitsFinishedProducts(row: RestrictionRow, { market, date }: LimitContext): boolean {
  return (
    (row.annex === 'III' || row.annex === 'V') &&
    row.rules.some(
      (rule) =>
        isFinishedLimit(rule) &&
        rule.markets.includes(market) &&
        (rule.from === undefined || date >= rule.from),
    )
  );
}

export function planLimits(row: RestrictionRow, context: LimitContext): LimitPlan {
  const chosen = situationsOf(context).map((situation) => chooseRules(row, context, situation));
  const prohibition = chosen.find((rules) => rules.prohibition !== undefined)?.prohibition;
  const warning = chosen.flatMap(({ limits }) => limits).find((rule) => rule.warning !== undefined)?.warning;
  const planned = (rule: RestrictionRuleRow): PlannedRule => planRule(row, rule, warning);
  const lowest = groupComparable([...new Set(chosen.flatMap(({ limits }) => limits))]).flatMap(
    (group) => lowestRule(group) ?? [],
  );
  const notKnown = lowest.find(({ value }) => value === null);
  const isUncovered =
    limitsFinishedProducts(row, context) &&
    chosen.some((rules) => rules.prohibition === undefined && !rules.limits.some(isFinishedLimit));
  const known = lowest.filter(({ value }) => value !== null);
  return {
    ...(prohibition !== undefined && { prohibition: planRule(row, prohibition) }),
    ...(notKnown !== undefined && { notKnown: planned(notKnown) }),
    limits: known.filter(isCountable).map(planned),
    isUncovered,
    certificates: known.filter((rule) => !isCountable(rule)).map(planned),
    told: warned(tellRule(row, undefined), warning),
  };
}

/** Plans depend on the row and the product alone: each is worked out once. */
export function recallPlans(tables: SafetyTables, context: LimitContext): (row: RestrictionRow) => LimitPlan {
  const { plans } = tables.remembered;
  const key = contextKey(context);
  const known = plans.get(key) ?? new Map<RestrictionRow, LimitPlan>();
  if (plans.size >= REMEMBERED_AT_MOST) plans.clear();
  plans.set(key, known);
  return (row) => {
    const plan = known.get(row) ?? planLimits(row, context);
    known.set(row, plan);
    return plan;
  };
}

/** Kinds of product that one workshop makes for its markets, many times over. */
const REMEMBERED_AT_MOST = 200;

const contextKey = (context: LimitContext): string =>
  [
    context.market,
    context.use,
    context.category,
    context.date,
    context.bodyPart,
    context.productType,
    context.minAgeMonths,
    context.hasNitrosatingAgent,
  ].join('|');
