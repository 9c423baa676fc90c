import { fractionOf, NOUGHT, UNIT } from '../linear/index.ts';
import { type Composition, type Group, groupMembers } from './compose.ts';
import { judgePeroxide, type RawMaterialFigures } from './judge-raw-material.ts';
import { type Judged, type LimitVerdict, tellVerdict } from './limit-verdict.ts';
import { comparePercent, picopercentFrom, toFraction, toPercent } from './percent-sum.ts';
import type { IfraRow, Use } from './safety-table-rows.ts';
import type { RuleTold } from './told.ts';

export interface IfraContext {
  readonly category: string;
  readonly use: Use;
  /** What the papers of the lots measure; absent where no lots are chosen. */
  readonly rawMaterials?: readonly RawMaterialFigures[];
}

/** Rows never change: what is told of one is put together once. */
const TOLD = new WeakMap<IfraRow, RuleTold>();

export function tellStandard(row: IfraRow): RuleTold {
  const known = TOLD.get(row);
  if (known !== undefined) return known;
  const citation = `IFRA Standards${row.edition === undefined ? '' : `, ${row.edition}th Amendment`}`;
  const told: RuleTold = {
    kind: 'ifra',
    entry: row.name,
    ...(row.edition !== undefined && { edition: row.edition }),
    source: `${row.name}: ${citation}`,
    citation,
    confidence: row.confidence,
    ruleId: row.id,
  };
  TOLD.set(row, told);
  return told;
}

export const limitOf = (row: IfraRow, { category, use }: IfraContext): IfraRow['limits'][string] =>
  row.rinseOffFree === true && use === 'rinse-off' ? 'no-restriction' : (row.limits[category] ?? 'unknown');

function judgeStandard({ row, sum, told }: Group<IfraRow>, context: IfraContext): LimitVerdict {
  const limit = limitOf(row, context);
  const standard = tellStandard(row);
  if (limit === 'no-restriction' || sum.near === 0) return tellVerdict(told, { verdict: 'within' }, standard);
  if (limit === 'unknown') {
    return tellVerdict(told, { verdict: 'unknown', reason: 'value-not-known' }, standard);
  }
  if (limit === 'prohibited') return tellVerdict(told, { verdict: 'prohibited' }, standard);
  const isOver = comparePercent(sum, picopercentFrom(limit)) > 0;
  return tellVerdict(told, { limitPercent: limit, verdict: isOver ? 'over' : 'within' }, standard);
}

/** A rule for the raw material, where the Standard has one: its certificate answers. */
function judgeSpecification(
  { row, sum, told }: Group<IfraRow>,
  { rawMaterials = [] }: IfraContext,
): LimitVerdict | undefined {
  const { specification } = row;
  if (specification === undefined || sum.near === 0) return undefined;
  const { value, unit, asWhat, strict = false } = specification;
  const judged: Judged =
    unit === 'mmol-per-litre'
      ? judgePeroxide({ limitValue: value, isStrict: strict }, told.fromMaterials ?? [], rawMaterials)
      : { limitValue: value, limitUnit: unit, verdict: 'unknown', reason: 'needs-certificate' };
  return Object.assign(tellVerdict(told, judged, tellStandard(row)), {
    asWhat,
    ...(strict && { isStrict: true }),
  });
}

interface PhototoxicShare {
  readonly group: Group<IfraRow>;
  readonly limit: number;
}

export function phototoxicShares(groups: readonly Group<IfraRow>[], context: IfraContext): PhototoxicShare[] {
  return groups.flatMap((group) => {
    const limit = group.row.sumGroup === 'phototoxic' ? limitOf(group.row, context) : undefined;
    return typeof limit === 'number' ? [{ group, limit }] : [];
  });
}

interface SumOfShares {
  readonly fraction: number;
  readonly isOver: boolean;
}

/** As doubles first (relative error below 1e-14 for eight oils); exactly where that lies within 1e-9 of the limit. */
function addShares(shares: readonly PhototoxicShare[]): SumOfShares {
  const near = shares.reduce((sum, { group, limit }) => sum + toPercent(group.sum) / limit, 0);
  if (Math.abs(near - 1) > 1e-9) return { fraction: near, isOver: near > 1 };
  const sum = shares.reduce(
    (total, { group, limit }) => total.plus(toFraction(group.sum).over(fractionOf(limit))),
    NOUGHT,
  );
  return { fraction: sum.near, isOver: sum.compare(UNIT) > 0 };
}

export const PHOTOTOXIC_SUM: RuleTold = {
  kind: 'ifra',
  entry: 'phototoxic-sum',
  edition: '49',
  source: 'phototoxic sum of shares, in percent of the limit: IFRA Standards, 49th Amendment',
  citation: 'IFRA Standards, 49th Amendment',
  ruleId: 'phototoxic-sum',
};

export interface IfraAnswer {
  readonly verdicts: readonly LimitVerdict[];
  /** Phototoxic oils: 1 is the limit; the limit itself is allowed. */
  readonly sumOfShares?: number;
}

/**
 * Oils that hold furocoumarins: sum of (content / limit) <= 1 over all of them (IFRA Standards, 49th Amendment).
 * Contents and limits in percent by mass of the finished product. Lemon 1.0 % of 2 % with lime 0.35 % of 0.7 % is
 * exactly the limit and passes.
 */
function sumPhototoxic(groups: readonly Group<IfraRow>[], context: IfraContext): IfraAnswer {
  const shares = phototoxicShares(groups, context);
  if (shares.length === 0) return { verdicts: [] };
  const { fraction, isOver } = addShares(shares);
  if (shares.length === 1) return { verdicts: [], sumOfShares: fraction };
  const { told } = groupMembers(
    '',
    'phototoxic sum',
    shares.flatMap(({ group }) => group.members),
  );
  const { members, amountConfidence, fromMaterials } = told;
  const verdict = tellVerdict(
    {
      name: 'phototoxic sum',
      percent: fraction * 100,
      members,
      ...(amountConfidence !== undefined && { amountConfidence }),
      ...(fromMaterials !== undefined && { fromMaterials }),
    },
    { limitPercent: 100, verdict: isOver ? 'over' : 'within' },
    PHOTOTOXIC_SUM,
  );
  return { verdicts: [verdict], sumOfShares: fraction };
}

/** A composition against the IFRA Standards; they do not differ by market. */
export function judgeIfra(context: IfraContext, { ifra }: Composition): IfraAnswer {
  const verdicts: LimitVerdict[] = [];
  for (const group of ifra.groups) {
    verdicts.push(judgeStandard(group, context));
    const specification = judgeSpecification(group, context);
    if (specification !== undefined) verdicts.push(specification);
  }
  const phototoxic = sumPhototoxic(ifra.groups, context);
  verdicts.push(...phototoxic.verdicts);
  for (const { told, doubt, mayBe, tellApartBy } of ifra.doubts) {
    const names = mayBe.map(({ name }) => name);
    verdicts.push(
      tellVerdict(told, { verdict: 'unknown', reason: doubt, mayBe: names, tellApartBy }, { kind: 'ifra' }),
    );
  }
  return { ...phototoxic, verdicts };
}
