import { beforeEach, describe, expect, it } from 'vitest';
import {
  type BuiltFormula,
  baseLine,
  buildBase,
  buildMixture,
  buildReport,
  line,
} from '../../../test/workshop/build-formula.ts';
import { constituent, openCheckBench, ranges } from '../../../test/workshop/check-bench.ts';
import { say } from '../../words/index.ts';

const hands = openCheckBench();
const { buildOil, check, codesOfReasons } = hands;

describe('the report in the check', () => {
  let oil: string;
  let mixture: BuiltFormula;
  beforeEach(async () => {
    oil = await buildOil([constituent('Geraniol', '106-24-1', '1')]);
    mixture = await buildMixture(hands.bench, [line(hands.fat, '99'), line(oil, '1')]);
  });
  const report = (more: object = {}) =>
    buildReport(hands.bench, {
      formulaIds: [mixture.formulaId],
      ranges: [ranges(hands.fat, '0', '100'), ranges(oil, '0', '100')],
      ...more,
    });

  it('stops the sale where there is none', async () => {
    expect(await codesOfReasons(mixture.revisionId)).toEqual(['sale-report-missing']);
    expect((await check(mixture.revisionId)).report).toBeNull();
  });

  it('binds by both ends of its ranges, each end allowed itself', async () => {
    const id = await report({ ranges: [ranges(hands.fat, '99', '99'), ranges(oil, '1', '1')] });
    expect(await codesOfReasons(mixture.revisionId)).toEqual([]);
    const change = (version: number, own: ReturnType<typeof ranges>[]) =>
      hands.bench.get('saveReport', {
        body: {
          id,
          version,
          details: {
            reference: 'R-1',
            assessor: 'A',
            signedOn: '2026-10-01',
            reviewBy: '2027-10-01',
            baseFormulaId: null,
            formulaIds: [mixture.formulaId],
            markets: ['GB', 'NI'],
            uses: ['leave-on'],
            ranges: own,
          },
        },
      });
    await change(1, [ranges(hands.fat, '99.000001', '100'), ranges(oil, '0', '0.999999')]);
    const view = await check(mixture.revisionId);
    expect(view.answer).toBe('no');
    expect(view.report?.rows.map((row) => row.verdict)).toEqual(['under', 'over']);
    expect(view.reasons.map((reason) => reason.code).sort()).toEqual([
      'sale-report-below',
      'sale-report-over',
    ]);
    await change(2, [ranges(hands.fat, '0', '100')]);
    expect(await codesOfReasons(mixture.revisionId)).toEqual(['sale-report-not-covered']);
  });

  it('has to be for the market', async () => {
    await report({ markets: ['GB'] });
    expect(await codesOfReasons(mixture.revisionId, 'GB')).toEqual([]);
    const { reasons } = await check(mixture.revisionId);
    expect(reasons).toMatchObject([{ code: 'sale-report-missing', parameters: { markets: 'NI' } }]);
  });

  it('may be one for each market', async () => {
    await report({ reference: 'UK-1', markets: ['GB'] });
    await report({ reference: 'EU-1', markets: ['NI', 'EU'] });
    expect((await check(mixture.revisionId)).answer).toBe('yes');
  });

  it('has to be for the use and the formula', async () => {
    await report({ uses: ['rinse-off'] });
    const other = await buildMixture(hands.bench, [line(hands.fat, '1')]);
    await report({ formulaIds: [other.formulaId] });
    expect(await codesOfReasons(mixture.revisionId)).toEqual(['sale-report-missing']);
  });

  it('is the newest by the day it was signed', async () => {
    await report({ reference: 'Newer', signedOn: '2026-11-01', ranges: [ranges(hands.fat, '0', '100')] });
    await report({ reference: 'Older', signedOn: '2026-09-01' });
    expect((await check(mixture.revisionId)).report?.reference).toBe('Newer');
    expect(await codesOfReasons(mixture.revisionId)).toEqual(['sale-report-not-covered']);
  });

  it('stops the sale once its review day is past, and says so for sixty days before', async () => {
    await report({ reviewBy: '2026-11-25' });
    const past = await check(mixture.revisionId);
    expect(past).toMatchObject({ answer: 'no', report: { isPast: true } });
    expect(past.reasons.map((reason) => reason.code)).toEqual(['sale-report-review-passed']);
    expect(past.reasons.map((reason) => say(reason))[0]).toContain('by 25 November 2026');
    const reasonsBy = async (signedOn: string, reviewBy: string) => {
      await report({ signedOn, reviewBy });
      return codesOfReasons(mixture.revisionId);
    };
    // Today is 26 November: on the day itself, thirty days before it, and one more.
    expect(await reasonsBy('2026-11-01', '2026-11-26')).toEqual(['sale-report-review-close']);
    expect(await reasonsBy('2026-11-02', '2027-01-25')).toEqual(['sale-report-review-close']);
    expect(await reasonsBy('2026-11-03', '2027-01-26')).toEqual([]);
  });

  it('has to name the base that the formula is made with', async () => {
    const base = await buildBase(hands.bench, [line(hands.fat, '1')]);
    const other = await buildBase(hands.bench, [line(hands.fat, '1')]);
    const scented = await buildMixture(hands.bench, [baseLine(base.formulaId, '99'), line(oil, '1')]);
    await report({ formulaIds: [scented.formulaId], baseFormulaId: other.formulaId });
    expect(await codesOfReasons(scented.revisionId)).toEqual(['sale-report-base-not-covered']);
    await report({ formulaIds: [scented.formulaId], baseFormulaId: base.formulaId, signedOn: '2026-11-01' });
    expect(await codesOfReasons(scented.revisionId)).toEqual([]);
  });

  it('of a base only has to know its materials, since the ranges are of the finished product', async () => {
    const base = await buildBase(hands.bench, [line(hands.fat, '1')]);
    expect(await codesOfReasons(base.revisionId)).toEqual(['sale-report-missing']);
    await report({
      formulaIds: [],
      baseFormulaId: base.formulaId,
      ranges: [ranges(hands.fat, '10', '60'), ranges(oil, '0.1', '1')],
    });
    expect(await codesOfReasons(base.revisionId)).toEqual([]);
  });
});
