import type { z } from 'zod';
import type { formulas } from '../../src/contract/index.ts';
import type { TestWorkshop } from './open-test-workshop.ts';

type Details = z.input<typeof formulas.revisionDetails>;
type Line = Details['lines'][number];
type Step = Details['steps'][number];

export const line = (itemId: string, grams: string, more: Partial<Line> = {}): Line => ({
  stage: 'Melt',
  itemKind: 'material',
  itemId,
  grams,
  ...more,
});

export const baseLine = (itemId: string, grams: string, more: Partial<Line> = {}): Line =>
  line(itemId, grams, { stage: 'Whip', itemKind: 'formula', ...more });

export const step = (kind: Step['kind'], what: string, more: Partial<Step> = {}): Step => ({
  stage: 'Melt',
  kind,
  what,
  leastCelsius: null,
  mostCelsius: null,
  minutes: null,
  caution: '',
  ...more,
});

/** A leave-on butter for the body, as for sale. */
export const revisionOf = (lines: readonly Line[], more: Partial<Details> = {}): Details => ({
  use: 'leave-on',
  category: '5A',
  bodyPart: 'body',
  productType: 'body-lotion',
  minAgeMonths: null,
  standing: 'for-sale',
  settingHours: null,
  keepMonths: null,
  note: '',
  lines: [...lines],
  steps: [],
  ...more,
});

export interface BuiltFormula {
  readonly formulaId: string;
  readonly revisionId: string;
}

export interface FormulaWish {
  readonly name?: string;
  readonly code?: string;
  readonly details?: Partial<Details>;
}

async function build(
  bench: TestWorkshop,
  kind: 'base' | 'mixture',
  lines: readonly Line[],
  { name, code, details }: FormulaWish,
): Promise<BuiltFormula> {
  const nth = (await bench.get('listFormulas')).length;
  const letter = String.fromCharCode(65 + (nth % 26));
  const { id } = await bench.get('saveFormula', {
    body: {
      name: name ?? `${kind} ${nth + 1}`,
      code: code ?? `${kind === 'base' ? 'B' : 'M'}${letter}`,
      kind,
    },
  });
  const revision = await bench.get('saveRevision', {
    params: { id },
    body: { version: null, details: revisionOf(lines, details) },
  });
  return { formulaId: id, revisionId: revision.id };
}

/** A base that sets in 12 to 24 hours and is kept for six months. */
export const buildBase = (
  bench: TestWorkshop,
  lines: readonly Line[],
  wish: FormulaWish = {},
): Promise<BuiltFormula> =>
  build(bench, 'base', lines, {
    ...wish,
    details: { settingHours: { least: 12, most: 24 }, keepMonths: 6, ...wish.details },
  });

export const buildMixture = (
  bench: TestWorkshop,
  lines: readonly Line[],
  wish: FormulaWish = {},
): Promise<BuiltFormula> => build(bench, 'mixture', lines, wish);

type Report = z.input<typeof formulas.reportDetails>;

/** An assessor's report for Great Britain and Northern Ireland, in time for a year. */
export async function buildReport(bench: TestWorkshop, more: Partial<Report> = {}): Promise<string> {
  const { id } = await bench.get('saveReport', {
    body: {
      details: {
        reference: 'R-1',
        assessor: 'A. N. Assessor',
        signedOn: '2026-07-01',
        reviewBy: '2027-10-01',
        baseFormulaId: null,
        formulaIds: [],
        markets: ['GB', 'NI'],
        uses: ['leave-on'],
        ranges: [],
        ...more,
      },
    },
  });
  return id;
}
