import type { RawMaterialFigures } from './judge-raw-material.ts';
import type { Market, RestrictionRow, RestrictionRuleRow } from './safety-table-rows.ts';
import { type ProductKind, type Situation, typesOf } from './situations.ts';

export interface LimitContext extends ProductKind {
  readonly market: Market;
  /** Day on which the product is placed on the market. */
  readonly date: string;
  /** Youngest intended user. Absent: adults, and babies in category 5D. */
  readonly minAgeMonths?: number;
  /** The formula holds nitrites or another nitrosating agent. */
  readonly hasNitrosatingAgent: boolean;
  /** What the papers of the lots measure; absent where no lots are chosen. */
  readonly rawMaterials?: readonly RawMaterialFigures[];
}

/** A product without a stated age is for adults (vocabulary of the tables); baby products are category 5D. */
const ADULT_MONTHS = 216;
/** "Made specifically for children": the entries give no age; under twelve years is a reading. */
const CHILD_MONTHS = 144;

const youngestUserOf = ({ category, minAgeMonths }: LimitContext): number =>
  minAgeMonths ?? (category === '5D' ? 0 : ADULT_MONTHS);

/** A condition that cannot be told from the composition is taken as met. */
function meetsCondition(onlyIf: string | undefined, context: LimitContext, situation: Situation): boolean {
  switch (onlyIf) {
    case 'not-oral':
      return situation.bodyPart !== 'oral';
    case 'lung-exposure':
    case 'aerosol-spray':
      return situation.maySpray;
    case 'with-nitrosating-agents':
      return context.hasNitrosatingAgent;
    case 'intended-for-children':
      return youngestUserOf(context) < CHILD_MONTHS;
    default:
      return true;
  }
}

function holds(rule: RestrictionRuleRow, context: LimitContext, situation: Situation): boolean {
  const types = typesOf(situation.productType);
  const youngest = youngestUserOf(context);
  return (
    rule.markets.includes(context.market) &&
    (rule.use === undefined || rule.use === context.use) &&
    (rule.bodyPart === undefined ||
      situation.bodyPart === undefined ||
      rule.bodyPart === situation.bodyPart) &&
    (rule.productType === undefined || types.includes(rule.productType)) &&
    !(rule.exceptProductTypes ?? []).some((type) => types.includes(type)) &&
    (rule.minAgeMonths === undefined || youngest >= rule.minAgeMonths) &&
    (rule.maxAgeMonths === undefined || youngest < rule.maxAgeMonths) &&
    (rule.from === undefined || context.date >= rule.from) &&
    meetsCondition(rule.onlyIf, context, situation)
  );
}

/** Limits that are compared with one another: those that count the same thing on the same basis. */
function comparedWith({ basis, quantity, asWhat, onlyIf, sumGroup }: RestrictionRuleRow): string {
  const esters = onlyIf === 'single-ester' || onlyIf === 'ester-mixture' ? onlyIf : '';
  return [basis, quantity, asWhat, sumGroup, esters].join('|');
}

/** A rule that names the product type replaces those that name none, then one that names the body part. */
function mostSpecific(rules: readonly RestrictionRuleRow[], situation: Situation): RestrictionRuleRow[] {
  const byType = typesOf(situation.productType)
    .map((type) => rules.filter(({ productType }) => productType === type))
    .find((named) => named.length > 0);
  const typed = byType ?? [...rules];
  const ofPart = typed.filter(({ bodyPart }) => bodyPart !== undefined);
  return situation.bodyPart !== undefined && ofPart.length > 0 ? ofPart : typed;
}

const inMilligramsPerKg = ({ value, unit }: RestrictionRuleRow): number =>
  (value ?? 0) * (unit === undefined ? 10_000 : 1);

/** Of what is left the lowest decides; a value that is not known decides before any figure. */
export function lowestRule(rules: readonly RestrictionRuleRow[]): RestrictionRuleRow | undefined {
  return (
    rules.find(({ value }) => value === null) ??
    rules.toSorted((a, b) => inMilligramsPerKg(a) - inMilligramsPerKg(b))[0]
  );
}

export interface ChosenRules {
  readonly prohibition?: RestrictionRuleRow;
  /** The deciding limit of each group of comparable limits. */
  readonly limits: readonly RestrictionRuleRow[];
}

export function groupComparable(rules: readonly RestrictionRuleRow[]): RestrictionRuleRow[][] {
  const groups = new Map<string, RestrictionRuleRow[]>();
  for (const rule of rules) {
    const key = comparedWith(rule);
    groups.set(key, [...(groups.get(key) ?? []), rule]);
  }
  return [...groups.values()];
}

/** The rules of one row that decide in one situation. */
export function chooseRules(row: RestrictionRow, context: LimitContext, situation: Situation): ChosenRules {
  const holding = row.rules.filter((rule) => holds(rule, context, situation));
  const prohibition = holding.find(({ quantity }) => quantity === 'prohibited');
  const limits = groupComparable(holding.filter(({ quantity }) => quantity !== 'prohibited')).flatMap(
    (group) => lowestRule(mostSpecific(group, situation)) ?? [],
  );
  return { ...(prohibition !== undefined && { prohibition }), limits };
}
