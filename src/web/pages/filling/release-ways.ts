import { fillingWords } from '../../../words/index.ts';
import type { Run } from './run.ts';

export interface Way {
  readonly words: string;
  readonly to: string;
}

const { ways: words } = fillingWords;
const batch = (run: Run): Way => ({ words: words.batch, to: `/making/${run.batchId}` });
const check = (run: Run): Way => ({ words: words.check, to: `/formulas/${run.formulaId}/check` });
const reports: Way = { words: words.reports, to: '/reports' };
const worksheet = (run: Run): Way => ({ words: words.worksheet, to: `/formulas/${run.formulaId}/worksheet` });

const BY_CHECK: Readonly<Record<string, (run: Run) => readonly Way[]>> = {
  purpose: (run) => [batch(run)],
  weights: (run) => [{ words: words.weights, to: `/filling/${run.id}#weights` }],
  markets: (run) => [{ words: words.product, to: `/products/${run.productId}` }],
  limits: (run) => [check(run)],
  report: () => [reports],
  weighed: (run) => [batch(run), worksheet(run), reports],
  worst: (run) => [{ words: words.decide, to: `/making/${run.batchId}` }],
  claims: () => [{ words: words.claims, to: '/' }],
  lots: (run) => (run.lotId === null ? [] : [{ words: words.trace, to: `/trace/${run.lotId}` }]),
};

/** Where somebody goes on who wants what is not passed to pass. */
export const listWays = (run: Run, { check: name }: Run['checks'][number]): readonly Way[] =>
  name.startsWith('label')
    ? [{ words: words.label, to: `/labels/${run.id}` }]
    : (BY_CHECK[name]?.(run) ?? []);
