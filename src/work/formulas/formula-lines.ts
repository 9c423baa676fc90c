import type { FormulaLine } from '../../core/formula/index.ts';

interface KeptLine {
  readonly stage: string;
  readonly item_kind: string;
  readonly item_id: string;
  readonly grams: string;
}

/** Lines as the calculation takes them: a formula within a formula is a base. */
export const formulaLinesOf = (lines: readonly KeptLine[]): FormulaLine[] =>
  lines.map((line, index) => ({
    key: String(index),
    stage: line.stage,
    item:
      line.item_kind === 'formula'
        ? { kind: 'base', formulaId: line.item_id }
        : { kind: 'material', id: line.item_id },
    grams: line.grams,
  }));
