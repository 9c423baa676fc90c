import type { LimitContext } from './choose-rules.ts';
import type { Composition, Group, Member } from './compose.ts';
import { gatherSumGroups } from './gather-sum-groups.ts';
import { judgePeroxide } from './judge-raw-material.ts';
import { type Judged, type LimitVerdict, tellVerdict, type UnknownReason } from './limit-verdict.ts';
import {
  addPercents,
  comparePercent,
  compareSums,
  type PercentSum,
  percentFromPico,
  toPercent,
} from './percent-sum.ts';
import { LESS_THAN_PUT_IN, recallPlans } from './plan-limits.ts';
import { normaliseName } from './read-name.ts';
import type { RestrictionRow } from './safety-table-rows.ts';
import type { LimitPlan, PlannedRule, SafetyTables } from './safety-tables.ts';

type LawGroup = Group<RestrictionRow>;

function isOverRule(sum: PercentSum, { rule, limitPico }: PlannedRule): boolean {
  const side = comparePercent(sum, limitPico);
  return rule.strict === true ? side >= 0 : side > 0;
}

export const substanceOf = ({ of }: Member): string => of.cas ?? normaliseName(of.name);

/** A single ester is judged by its own amount; everything else by the sum of the row. */
function amountFor({ rule }: PlannedRule, { members, sum }: LawGroup): PercentSum {
  if (rule.onlyIf !== 'single-ester') return sum;
  const esters = [...new Set(members.map(substanceOf))].map((ester) =>
    addPercents(members.filter((member) => substanceOf(member) === ester).map(({ percent }) => percent)),
  );
  return esters.reduce((most, each) => (compareSums(each, most) > 0 ? each : most));
}

/** Retinol counts wholly as retinol, an acid as the acid: only its salts and esters count for less than was put in. */
function countsWholly({ rule: { asWhat } }: PlannedRule, members: readonly Member[]): boolean {
  if (asWhat === undefined || !LESS_THAN_PUT_IN.has(asWhat)) return true;
  const self = asWhat === 'retinol equivalents' ? 'retinol' : asWhat;
  return members.every(({ of }) => normaliseName(of.name).endsWith(self));
}

const unknown = (reason: UnknownReason): Judged => ({ verdict: 'unknown', reason });

function judgeAmount(planned: PlannedRule, group: LawGroup): Judged {
  const limitPercent = percentFromPico(planned.limitPico);
  if (!isOverRule(amountFor(planned, group), planned)) return { limitPercent, verdict: 'within' };
  if (countsWholly(planned, group.members)) return { limitPercent, verdict: 'over' };
  return { limitPercent, verdict: 'unknown', reason: 'counted-as-other' };
}

/** The limit shown: one that is exceeded, else the one that the amount comes nearest to. */
function tightestOf(group: LawGroup, { limits }: LimitPlan): PlannedRule | undefined {
  const alone = limits.filter(({ rule }) => rule.sumGroup === undefined);
  if (alone.length < 2) return alone[0];
  const share = (planned: PlannedRule): number => amountFor(planned, group).near / planned.limitPico;
  const isOver = (planned: PlannedRule): boolean => isOverRule(amountFor(planned, group), planned);
  return alone.reduce((best, each) => {
    if (isOver(each) !== isOver(best)) return isOver(each) ? each : best;
    return share(each) > share(best) ? each : best;
  });
}

function outcomeOf(group: LawGroup, plan: LimitPlan, tightest: PlannedRule | undefined): Judged {
  if (group.sum.near === 0) return { verdict: 'within' };
  if (plan.prohibition !== undefined) return { verdict: 'prohibited' };
  if (plan.notKnown !== undefined) return unknown('value-not-known');
  const judged = tightest === undefined ? undefined : judgeAmount(tightest, group);
  if (judged?.verdict === 'over') return judged;
  return plan.isUncovered ? unknown('use-not-covered') : (judged ?? { verdict: 'no-rule' });
}

function certificateVerdict(
  group: LawGroup,
  { rule, told }: PlannedRule,
  { rawMaterials = [] }: LimitContext,
): LimitVerdict {
  const { value, unit: limitUnit = 'percent' } = rule;
  if (limitUnit === 'mmol-per-litre' && typeof value === 'number') {
    const asked = { limitValue: value, isStrict: rule.strict === true };
    return tellVerdict(group.told, judgePeroxide(asked, group.told.fromMaterials ?? [], rawMaterials), told);
  }
  const open: Judged = { limitUnit, verdict: 'unknown', reason: 'needs-certificate' };
  const judged = typeof value === 'number' ? Object.assign(open, { limitValue: value }) : open;
  return tellVerdict(group.told, judged, told);
}

/** The verdict of one row; none where the row has no rule for this market, use and date. */
function judgeRow(group: LawGroup, plan: LimitPlan, context: LimitContext, verdicts: LimitVerdict[]): void {
  const tightest = tightestOf(group, plan);
  const outcome = outcomeOf(group, plan, tightest);
  const decided = plan.prohibition ?? plan.notKnown ?? tightest;
  if (outcome.verdict !== 'no-rule') {
    const verdict = tellVerdict(group.told, outcome, decided?.told ?? plan.told);
    const isSingle = decided?.rule.onlyIf === 'single-ester';
    verdicts.push(isSingle ? { ...verdict, percent: toPercent(amountFor(decided, group)) } : verdict);
  }
  if (group.sum.near === 0) return;
  for (const certificate of plan.certificates) verdicts.push(certificateVerdict(group, certificate, context));
}

/** A composition against the rows of law of one market. */
export function judgeLaw(
  tables: SafetyTables,
  context: LimitContext,
  composition: Composition,
): LimitVerdict[] {
  const { groups, doubts } = composition.restrictions;
  const planOf = recallPlans(tables, context);
  const verdicts: LimitVerdict[] = [];
  const rows = groups.map((group) => ({ group, plan: planOf(group.row) }));
  for (const { group, plan } of rows) judgeRow(group, plan, context, verdicts);
  for (const { group, planned } of gatherSumGroups(rows))
    verdicts.push(tellVerdict(group.told, judgeAmount(planned, group), planned.told));
  for (const { told, doubt, mayBe, tellApartBy } of doubts) {
    const here = mayBe.filter(({ rules }) => rules.some(({ markets }) => markets.includes(context.market)));
    const names = here.map(({ name }) => name);
    if (here.length === 0) continue;
    verdicts.push(
      tellVerdict(told, { verdict: 'unknown', reason: doubt, mayBe: names, tellApartBy }, { kind: 'law' }),
    );
  }
  return verdicts;
}
