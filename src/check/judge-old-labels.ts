import { boundSafetyTables } from '../catalogue/index.ts';
import type { Market } from '../contract/index.ts';
import { judgeOldStock, listNamingChanges, type NamingChange, type OldStock } from '../core/safety/index.ts';
import { type FormulaQuestion, judgeFormula } from './judge-formula.ts';

export interface OldLabelQuestion extends Pick<FormulaQuestion, 'opened' | 'decisions'> {
  readonly market: Market;
  /** The day by whose law the labels were worded. */
  readonly labelledOn: string;
  /** Day of first supply. */
  readonly placedOn: string;
  readonly today: string;
}

/** Labels that a newer law asks for more than they say. */
export interface OldLabel extends OldStock {
  readonly market: Market;
  readonly labelledOn: string;
  /** Names that the newer law asks for and that they lack. */
  readonly lacking: readonly string[];
  /** What nobody has decided on, and may have to be named by the newer law. */
  readonly undecided: readonly string[];
}

/** No day is later than all that the tables know. */
const changesAfter = (day: string): NamingChange[] =>
  listNamingChanges(boundSafetyTables()).filter((change) => change.requiredForPlacingFrom > day);

/** Whether any table asks for more since, or will: whatever is in the tins. */
export const isUnderOlderLaw = (labelledOn: string): boolean => changesAfter(labelledOn).length > 0;

/**
 * What labels of an earlier day lack by each newer law on fragrance allergens, and how long tins with them may still be
 * placed on the market or sold on; nothing where the newer law asks this composition for nothing in this market.
 */
export function judgeOldLabels(question: OldLabelQuestion): OldLabel[] {
  const { market, labelledOn } = question;
  const before = namesOn(question, labelledOn);
  return changesAfter(labelledOn).flatMap((change): OldLabel[] => {
    const after = namesOn(question, change.requiredForPlacingFrom);
    const lacking = after.named.filter((name) => !before.named.includes(name));
    const undecided = after.undecided.filter((name) => !before.undecided.includes(name));
    if (lacking.length + undecided.length === 0) return [];
    return [{ ...judgeOldStock(change, question), market, labelledOn, lacking, undecided }];
  });
}

function namesOn({ opened, decisions, market }: OldLabelQuestion, day: string) {
  const checked = judgeFormula({
    opened,
    decisions,
    markets: [market],
    today: day,
    reports: [],
    isWeighed: true,
  });
  const namings = checked.groups.flatMap(({ answer }) => answer.markets.map(({ naming }) => naming));
  return {
    named: namings.flatMap(({ named }) => named.map(({ labelName }) => labelName)),
    undecided: namings.flatMap(({ unknown }) =>
      unknown.filter(({ decision }) => !decision?.isAccepted).map(({ name }) => name),
    ),
  };
}
