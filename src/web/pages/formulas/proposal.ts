import { keptInTab } from '../../api/kept.ts';

interface ProposedLine {
  readonly stage: string;
  readonly itemKind: 'material' | 'formula';
  readonly itemId: string;
  readonly grams: string;
}

const keyOf = (formulaId: string): string => `proposal.${formulaId}`;

/** Amounts tried out on one page, for the recipe's form on another: kept in this tab until that form is opened. */
export const keepProposal = (formulaId: string, lines: readonly ProposedLine[]): void =>
  keptInTab.write(keyOf(formulaId), JSON.stringify(lines));

export function readProposal(formulaId: string): readonly ProposedLine[] | null {
  const text = keptInTab.read(keyOf(formulaId));
  return text === null ? null : (JSON.parse(text) as readonly ProposedLine[]);
}

export const dropProposal = (formulaId: string): void => keptInTab.write(keyOf(formulaId), null);
