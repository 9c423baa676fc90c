import { labelRules, usLabelRules, usPanelFigureHeights } from '../reference/index.ts';
import { rowById } from './row-by-id.ts';

const needed = (value: number | undefined, what: string): number => {
  if (value === undefined) throw new Error(`the label rules lack ${what}`);
  return value;
};

const letters = rowById(usLabelRules, 'us-ingredient-letter');

/** Published heights that a label is laid out by: the estimated sign, and the letters of the United States. */
export const labelPrintRules = {
  eMarkHeightMm: needed(rowById(labelRules, 'e-mark').minHeightMm, 'the height of the estimated sign'),
  unitedStates: {
    netHeights: usPanelFigureHeights,
    ingredients: {
      minHeightInch: needed(letters.minHeightInch, 'the height of letters'),
      smallMinHeightInch: needed(letters.smallPanelMinHeightInch, 'the height of small letters'),
      smallBelowSquareInch: needed(letters.smallPanelSquareInch, 'the area of small letters'),
    },
  },
};
