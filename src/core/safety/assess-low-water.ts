import { exact, HUNDRED } from '../quantity/index.ts';
import { judgeLowRiskCriterion } from './judge-low-risk-criterion.ts';
import type {
  JudgedAntioxidant,
  JudgedCriterion,
  LowWaterAnswer,
  LowWaterCaution,
  LowWaterFacts,
  LowWaterReason,
  LowWaterTables,
} from './low-water.ts';

/** Activities over saturated solutions are remembered to a hundredth: closer to the figure nothing can be told. */
const DOUBT = 0.01;

/** Water that comes in dissolves salt or sugar until it is saturated: drier it cannot get. */
function isSolutionTooWet({ dissolves = [] }: LowWaterFacts, tables: LowWaterTables): boolean {
  const figure = tables.criteria.find(({ quantity }) => quantity === 'waterActivity')?.value;
  if (typeof figure !== 'number') return false;
  const held = tables.solutions.filter(({ id }) => dissolves.includes(id));
  return held.some(({ waterActivityAt25Celsius }) =>
    exact(waterActivityAt25Celsius).gt(exact(figure).plus(DOUBT)),
  );
}

/**
 * Heat kills what is there when it is filled, and a water activity is measured before anybody used it: what comes in with
 * water afterwards neither of them reaches (our reading). Heat counts only where somebody said that none comes in; a
 * measured activity falls where it is known that some does.
 */
const holdsInUse = ({ quantity }: JudgedCriterion, { canWaterComeIn }: LowWaterFacts): boolean => {
  if (quantity === 'fillingTemperatureCelsius') return canWaterComeIn === false;
  return quantity !== 'waterActivity' || canWaterComeIn !== true;
};

interface Outcome {
  readonly lowRisk: LowWaterAnswer['lowRisk'];
  readonly reason: LowWaterReason;
}

/** Nothing met: with water in it the answer is no; where water comes in later, it hangs on what dissolves in it. */
function outcomeWithout(facts: LowWaterFacts, tables: LowWaterTables, isMet: boolean): Outcome {
  if (isMet && facts.canWaterComeIn === undefined)
    return { lowRisk: 'unknown', reason: 'water-in-use-not-told' };
  if (facts.hasWaterPhase === undefined) return { lowRisk: 'unknown', reason: 'water-phase-not-told' };
  if (facts.hasWaterPhase) return { lowRisk: 'no', reason: 'water-phase' };
  if (facts.canWaterComeIn === undefined) return { lowRisk: 'unknown', reason: 'water-in-use-not-told' };
  return isSolutionTooWet(facts, tables)
    ? { lowRisk: 'no', reason: 'solution-too-wet' }
    : { lowRisk: 'unknown', reason: 'water-comes-in' };
}

function cautionsOf(facts: LowWaterFacts, lowRisk: LowWaterAnswer['lowRisk']): LowWaterCaution[] {
  const { hasWaterPhase, canWaterComeIn, canWaterCondense, antioxidants = [], starchPercent = 0 } = facts;
  const isDry = !hasWaterPhase;
  return [
    ...(isDry && canWaterComeIn === true ? (['low-water-comes-in'] as const) : []),
    ...(isDry && canWaterComeIn === undefined ? (['low-water-may-come-in'] as const) : []),
    ...(isDry && canWaterCondense !== false ? (['low-water-condenses'] as const) : []),
    ...(antioxidants.length > 0 ? (['low-water-antioxidant'] as const) : []),
    ...(exact(starchPercent).gt(0) ? (['low-water-starch'] as const) : []),
    ...(lowRisk === 'yes' ? (['low-water-write-down'] as const) : []),
  ];
}

function judgeAntioxidants(
  { antioxidants = [] }: LowWaterFacts,
  tables: LowWaterTables,
): JudgedAntioxidant[] {
  return antioxidants.flatMap(({ id, percent }) => {
    const row = tables.antioxidants.find((each) => each.id === id);
    if (row === undefined) return [];
    const found = exact(percent);
    const isBelow = row.minPercent !== undefined && found.lt(row.minPercent);
    const isAbove = row.maxPercent !== undefined && found.gt(row.maxPercent);
    const hasLevel = row.minPercent !== undefined || row.maxPercent !== undefined;
    const within = hasLevel ? 'usual' : 'no-level';
    return [
      { ...row, percent: found.toNumber(), verdict: isBelow ? 'below' : isAbove ? 'above' : within } as const,
    ];
  });
}

function boundWaterOf({ starchPercent }: LowWaterFacts, { starchMoisture }: LowWaterTables) {
  if (starchPercent === undefined || exact(starchPercent).isZero()) return null;
  const share = (moisture: number) => exact(starchPercent).times(moisture).div(HUNDRED).toNumber();
  return { typical: share(starchMoisture.typicalPercent), most: share(starchMoisture.maxPercent) };
}

/**
 * Whether a product is microbiologically low-risk in the sense of ISO 29621:2017, from what is known of its formula, and
 * what to be careful of. One criterion that is met is enough; what nobody told meets none. Low risk is a claim that the
 * maker has to justify in writing, and the qualified assessor decides upon it: this prepares it.
 */
export function assessLowWater(facts: LowWaterFacts, tables: LowWaterTables): LowWaterAnswer {
  const criteria = tables.criteria.map((row): JudgedCriterion => judgeLowRiskCriterion(row, facts));
  const criterion = criteria.find((each) => each.verdict === 'met' && holdsInUse(each, facts)) ?? null;
  const isMet = criteria.some(({ verdict }) => verdict === 'met');
  const outcome: Outcome =
    criterion === null ? outcomeWithout(facts, tables, isMet) : { lowRisk: 'yes', reason: 'criterion-met' };
  return {
    ...outcome,
    criterion,
    criteria,
    open: criteria.filter(({ verdict }) => verdict === 'not-told').map(({ id }) => id),
    cautions: cautionsOf(facts, outcome.lowRisk),
    antioxidants: judgeAntioxidants(facts, tables),
    boundWaterPercent: boundWaterOf(facts, tables),
  };
}
