import { labelPrintRules } from '../../src/catalogue/index.ts';
import type { LayoutTools } from '../../src/print/layout/index.ts';
import { loadCodes, loadFaces } from '../../src/print/paint/index.ts';

/** The tools with which the program itself lays out. */
export const printTools: LayoutTools = { faces: loadFaces(), codes: loadCodes(), rules: labelPrintRules };
