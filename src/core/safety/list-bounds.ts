import { exact } from '../quantity/index.ts';
import type { Composition, Group, Member } from './compose.ts';
import { gatherSumGroups } from './gather-sum-groups.ts';
import { limitOf, PHOTOTOXIC_SUM, phototoxicShares, tellStandard } from './judge-ifra.ts';
import { substanceOf } from './judge-law.ts';
import { type LimitsContext, lawContextOf } from './judge-limits.ts';
import { percentFromPico } from './percent-sum.ts';
import { recallPlans } from './plan-limits.ts';
import type { IfraRow, RestrictionRow } from './safety-table-rows.ts';
import type { LimitPlan, PlannedRule, SafetyTables } from './safety-tables.ts';
import type { RuleTold } from './told.ts';

/**
 * A known limit as a bound on a sum: of each member's percent, over `dividedBy` where the limit is on a sum of shares.
 * A prohibition is a bound at nought.
 */
export interface LimitBound {
  readonly name: string;
  readonly told: RuleTold;
  readonly terms: readonly { readonly member: Member; readonly dividedBy?: number }[];
  /** Percent by mass of the finished product; 1 for a sum of shares. */
  readonly most: number;
}

/** Every known limit of law and IFRA on what is in it, whatever the amounts: what judgeLimits compares, as data. */
export function listBounds(
  tables: SafetyTables,
  context: LimitsContext,
  composition: Composition,
): LimitBound[] {
  const planOf = recallPlans(tables, lawContextOf(context, composition));
  const rows = composition.restrictions.groups.map((group) => ({ group, plan: planOf(group.row) }));
  return [
    ...rows.flatMap(({ group, plan }) => boundsOfRow(group, plan)),
    ...gatherSumGroups(rows).map(({ name, group, planned }) =>
      boundOn(name, group.members, planned.told, mostOf(planned)),
    ),
    ...composition.ifra.groups.flatMap((group) => boundsOfStandard(group, context)),
    ...boundOnShares(composition, context),
  ];
}

const boundOn = (name: string, members: readonly Member[], told: RuleTold, most: number): LimitBound => ({
  name,
  told,
  terms: members.map((member) => ({ member })),
  most,
});

type LawGroup = Group<RestrictionRow>;

function boundsOfRow({ told, members }: LawGroup, { prohibition, limits }: LimitPlan): LimitBound[] {
  if (prohibition !== undefined) return [boundOn(told.name, members, prohibition.told, 0)];
  const alone = limits.filter(({ rule }) => rule.sumGroup === undefined);
  return alone.flatMap((planned) =>
    partsOf(planned, members).map((part) => boundOn(told.name, part, planned.told, mostOf(planned))),
  );
}

const mostOf = ({ limitPico }: PlannedRule): number => percentFromPico(limitPico);

/** A single ester is judged by its own amount; everything else by the sum of the row. */
function partsOf({ rule }: PlannedRule, members: readonly Member[]): (readonly Member[])[] {
  if (rule.onlyIf !== 'single-ester') return [members];
  const esters = [...new Set(members.map(substanceOf))];
  return esters.map((ester) => members.filter((member) => substanceOf(member) === ester));
}

function boundsOfStandard({ row, told, members }: Group<IfraRow>, context: LimitsContext): LimitBound[] {
  const limit = limitOf(row, context);
  if (limit === 'prohibited') return [boundOn(told.name, members, tellStandard(row), 0)];
  return typeof limit === 'number' ? [boundOn(told.name, members, tellStandard(row), limit)] : [];
}

/** Oils that hold furocoumarins: the sum of content / limit is 1 at the most. */
function boundOnShares({ ifra }: Composition, context: LimitsContext): LimitBound[] {
  const shares = phototoxicShares(ifra.groups, context).filter(({ limit }) => exact(limit).gt(0));
  if (shares.length < 2) return [];
  const terms = shares.flatMap(({ group, limit }) =>
    group.members.map((member) => ({ member, dividedBy: limit })),
  );
  return [{ name: 'phototoxic sum', told: PHOTOTOXIC_SUM, terms, most: 1 }];
}
