import type { UseCases } from '../use-case.ts';
import { checkRevision } from './check-revision.ts';
import { decideUnknown } from './decide-unknown.ts';
import { getFormula, getRevision, listFormulas } from './formula-view.ts';
import { getCheckFacts } from './get-check-facts.ts';
import { getRoom } from './get-room.ts';
import { listFormerDecisions } from './list-former-decisions.ts';
import { attachReportFile, getReportFile } from './report-file.ts';
import { listReports } from './report-view.ts';
import { saveFormula } from './save-formula.ts';
import { saveReport } from './save-report.ts';
import { saveRevision } from './save-revision.ts';

export { checkForSale, judgeForSale, type SaleCheck } from './check-for-sale.ts';
export { formulaLinesOf } from './formula-lines.ts';
export { readFormulaLookup } from './formula-lookup.ts';
export { type LotLookup, openRevision } from './open-revision.ts';
export { ALL_MARKETS } from './read-sold-in.ts';
export { type RevisionDetails, type RevisionView, viewRevision, viewRevisions } from './revision-view.ts';
export { listRevisionsInForce } from './revisions-in-force.ts';
export { runCheck } from './run-check.ts';

export const formulaUseCases = {
  listFormulas,
  getFormula,
  saveFormula,
  getRevision,
  saveRevision,
  checkRevision,
  getRoom,
  getCheckFacts,
  decideUnknown,
  listFormerDecisions,
  listReports,
  saveReport,
  attachReportFile,
  getReportFile,
} satisfies UseCases<
  | 'listFormulas'
  | 'getFormula'
  | 'saveFormula'
  | 'getRevision'
  | 'saveRevision'
  | 'checkRevision'
  | 'getRoom'
  | 'getCheckFacts'
  | 'decideUnknown'
  | 'listFormerDecisions'
  | 'listReports'
  | 'saveReport'
  | 'attachReportFile'
  | 'getReportFile'
>;
