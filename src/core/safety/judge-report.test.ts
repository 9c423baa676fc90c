import { describe, expect, it } from 'vitest';
import { judgeReport, type ReportQuestion } from './judge-report.ts';

const question: ReportQuestion = {
  report: {
    reference: 'SR-7',
    reviewBy: '2027-05-31',
    baseIds: ['whipped'],
    scentIds: ['meadow', 'orchard'],
    materials: [
      { materialId: 'shea', name: 'Shea butter', leastPercent: 40, mostPercent: 70 },
      { materialId: 'lavender', name: 'Lavender oil', mostPercent: 0.5 },
    ],
  },
  baseId: 'whipped',
  scentId: 'meadow',
  materials: [
    { materialId: 'shea', name: 'Shea butter', percent: 60 },
    { materialId: 'lavender', name: 'Lavender oil', percent: 0.5 },
  ],
  date: '2026-11-25',
};
const withMaterials = (...materials: ReportQuestion['materials']) => judgeReport({ ...question, materials });

describe("the assessor's report", () => {
  it('covers a formula within all its ranges; the bounds themselves are allowed', () => {
    expect(judgeReport(question)).toMatchObject({
      verdict: 'within',
      coversBase: true,
      coversScent: true,
      review: 'in-time',
    });
  });

  it('tells the exact distance above and below a range', () => {
    const answer = withMaterials(
      { materialId: 'shea', name: 'Shea butter', percent: '39.9999' },
      { materialId: 'lavender', name: 'Lavender oil', percent: '0.5000000000000000001' },
    );
    expect(answer.verdict).toBe('over');
    expect(answer.materials.map(({ verdict, differencePercent }) => [verdict, differencePercent])).toEqual([
      ['below', '0.0001'],
      ['over', '0.0000000000000000001'],
    ]);
  });

  it('judges a material that stands in the formula twice by its whole amount', () => {
    const half = { materialId: 'lavender', name: 'Lavender oil', percent: 0.3 };
    const answer = withMaterials({ materialId: 'shea', name: 'Shea butter', percent: 50 }, half, half);
    expect(answer.materials).toMatchObject([
      { verdict: 'within' },
      { verdict: 'over', differencePercent: '0.1' },
    ]);
  });

  it('does not cover a material that it does not name', () => {
    const answer = withMaterials(...question.materials, { materialId: 'mica', name: 'Mica', percent: 0.01 });
    expect(answer).toMatchObject({
      verdict: 'not-covered',
      materials: { 2: { verdict: 'not-covered', name: 'Mica' } },
    });
  });

  it('finds a material left out that the report asks a least amount of', () => {
    const answer = withMaterials({ materialId: 'lavender', name: 'Lavender oil', percent: 0.4 });
    expect(answer.materials[1]).toMatchObject({
      materialId: 'shea',
      verdict: 'below',
      differencePercent: '40',
    });
  });

  it('does not cover another base or scent', () => {
    expect(judgeReport({ ...question, baseId: 'poured' })).toMatchObject({
      verdict: 'not-covered',
      coversBase: false,
    });
    expect(judgeReport({ ...question, scentId: 'harbour' })).toMatchObject({
      verdict: 'not-covered',
      coversScent: false,
    });
  });

  it('warns when the review day is close, and after it', () => {
    const reviewOn = (date: string) => judgeReport({ ...question, date }).review;
    expect(reviewOn('2027-03-31')).toBe('in-time');
    expect(reviewOn('2027-04-01')).toBe('close');
    expect(reviewOn('2027-05-31')).toBe('close');
    expect(reviewOn('2027-06-01')).toBe('passed');
  });
});
