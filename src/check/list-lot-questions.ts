import type { formulas } from '../contract/index.ts';
import type { Checked, SignedDecision } from './checked.ts';
import { type FormulaQuestion, judgeFormula } from './judge-formula.ts';
import { listQuestionsOf, type OpenQuestion } from './list-questions.ts';
import { listUnknowns, type MarketUnknown } from './list-unknowns.ts';
import { openComposition } from './open-composition.ts';
import { decisionsByKey, standingDecisions } from './unknown-key.ts';
import { type CertifiedLot, withCertificate } from './with-certificate.ts';

export type LotQuestion = OpenQuestion & Pick<formulas.LotQuestion, 'material' | 'lots'>;

/**
 * A question that only a lot's certificate raises is about the formula made with such a lot. Its key names the
 * composition that the paper gives, so that a decision holds for every lot of the same figures and for no other.
 */
const LOT = '@lot:';
const keyWithLot = (unknown: MarketUnknown): string => `${unknown.key}${LOT}${unknown.digest}`;

export const isOfLot = (key: string): boolean => key.includes(LOT);

interface OfLot {
  readonly lot: CertifiedLot;
  readonly material: string;
  readonly checked: Checked;
  /** Under the key with the lot's composition. */
  readonly unknowns: readonly MarketUnknown[];
}

/** The formula as if all of the material were of this lot. */
function judgeWithLot(question: FormulaQuestion, lot: CertifiedLot): Checked | undefined {
  const { contributions: _, kinds: _kinds, ...parts } = question.opened;
  const details = parts.materials.get(lot.materialId);
  if (details === undefined) return undefined;
  const materials = new Map(parts.materials).set(lot.materialId, withCertificate(details, lot));
  const opened = openComposition({ ...parts, materials });
  return opened.ok
    ? judgeFormula({ ...question, opened: opened.value, decisions: [], isWeighed: false })
    : undefined;
}

/** What each of these lots raises and the formula, as its materials are known, does not. */
function askOfLots(question: FormulaQuestion, lots: readonly CertifiedLot[]): OfLot[] {
  const known = new Set(listUnknowns(judgeFormula({ ...question, decisions: [] })).map(({ key }) => key));
  return lots.flatMap((lot): OfLot[] => {
    const checked = judgeWithLot(question, lot);
    const own = checked ? listUnknowns(checked).filter(({ key }) => !known.has(key)) : [];
    if (!checked || own.length === 0) return [];
    const material = question.opened.materials.get(lot.materialId)?.name ?? '';
    return [{ lot, material, checked, unknowns: own.map((one) => ({ ...one, key: keyWithLot(one) })) }];
  });
}

export const listLotUnknowns = (question: FormulaQuestion, lots: readonly CertifiedLot[]): MarketUnknown[] =>
  askOfLots(question, lots).flatMap(({ unknowns }) => unknowns);

/** Each once, whatever number of lots has the same figures. */
export function listLotQuestions(question: FormulaQuestion, lots: readonly CertifiedLot[]): LotQuestion[] {
  const everDecided = decisionsByKey(question.decisions);
  const decisions = standingDecisions(everDecided);
  const byKey = new Map<string, LotQuestion>();
  for (const { lot, material, checked, unknowns } of askOfLots(question, lots)) {
    const known = { ...checked, decisions, everDecided, lapsed: new Map<string, SignedDecision>() };
    for (const asked of listQuestionsOf(known, unknowns)) {
      const before = byKey.get(asked.key);
      byKey.set(asked.key, { ...asked, material, lots: [...(before?.lots ?? []), lot.lotNumber] });
    }
  }
  return [...byKey.values()];
}

/**
 * The decisions with those on what only these lots raise, each under the key that the batch asks it by. Of a question
 * that several lots raise all of them have to be decided.
 */
export function withLotDecisions(
  question: FormulaQuestion,
  lots: readonly CertifiedLot[],
): readonly SignedDecision[] {
  const { decisions } = question;
  if (!decisions.some(({ unknown_key }) => isOfLot(unknown_key))) return decisions;
  const standing = standingDecisions(decisionsByKey(decisions));
  const found = new Map<string, SignedDecision | undefined>();
  for (const { key } of listLotUnknowns(question, lots)) {
    const plain = key.slice(0, key.indexOf(LOT));
    const decision = standing.get(key);
    const before = found.has(plain) ? found.get(plain) : decision;
    const isOpen = decision === undefined || before === undefined;
    const isRefused = decision?.verdict === 'refused';
    found.set(plain, isOpen ? undefined : isRefused ? decision : before);
  }
  const translated = [...found].flatMap(([unknown_key, decision]) =>
    decision === undefined ? [] : [{ ...decision, unknown_key }],
  );
  return [...decisions, ...translated];
}
