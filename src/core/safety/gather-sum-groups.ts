import { type Group, groupMembers } from './compose.ts';
import type { RestrictionRow } from './safety-table-rows.ts';
import type { LimitPlan, PlannedRule } from './safety-tables.ts';

/** A row of law that something in the product falls under, with what it asks for. */
export interface PlannedRow {
  readonly group: Group<RestrictionRow>;
  readonly plan: LimitPlan;
}

/** Rows whose rules are kept together: all that falls under any of them, and the lowest of their limits. */
export interface SumGroup {
  readonly name: string;
  readonly group: Group<RestrictionRow>;
  readonly planned: PlannedRule;
}

interface Carried {
  readonly group: Group<RestrictionRow>;
  readonly planned: PlannedRule;
}

/** Amounts of all rows whose rules carry the same sum group are added before they are compared with a limit. */
export function gatherSumGroups(rows: readonly PlannedRow[]): SumGroup[] {
  const sums = new Map<string, Carried[]>();
  for (const { group, plan } of rows) {
    for (const planned of plan.limits) {
      const { sumGroup } = planned.rule;
      if (sumGroup !== undefined) sums.set(sumGroup, [...(sums.get(sumGroup) ?? []), { group, planned }]);
    }
  }
  return [...sums.values()].flatMap(joinCarried);
}

function joinCarried(found: readonly Carried[]): SumGroup[] {
  // By id, so that it is the same whatever the order of the lines.
  const carried = found.toSorted((a, b) => (a.planned.rule.id < b.planned.rule.id ? -1 : 1));
  const [first] = carried;
  if (first === undefined) return [];
  const name = carried.map(({ group }) => group.row.name).join(' with ');
  const members = [...new Set(carried.flatMap(({ group }) => group.members))];
  const { planned } = carried.reduce((low, each) =>
    each.planned.limitPico < low.planned.limitPico ? each : low,
  );
  return [{ name, group: groupMembers(first.group.row, name, members), planned }];
}
