import { describe, expect, it } from 'vitest';
import { netContentsTables } from '../../catalogue/index.ts';
import { must } from '../problem.ts';
import { judgeRun, type Run } from './judge-run.ts';

const run: Run = { declaredGrams: 80, basis: 'minimum', wanted: 12, netGrams: [], scaleErrorGrams: 0.2 };
const judge = (change: Partial<Run>) => must(judgeRun({ ...run, ...change }, netContentsTables));
const repeat = (count: number, weight: number | string) => Array.from({ length: count }, () => weight);

describe('verdict of a filling run', () => {
  it('has none before the first tin', () => {
    expect(judge({})).toMatchObject({
      verdict: 'none-yet',
      filled: 0,
      stillToFill: 12,
      meanGrams: null,
      decidedBy: null,
    });
  });

  it('tells mean, giveaway and what is still to fill', () => {
    const found = judge({ netGrams: ['80.4', '81.0', '80.6'] });
    expect(found).toMatchObject({ verdict: 'accept', filled: 3, stillToFill: 9, belowNominal: 0 });
    expect(found.giveawayGrams?.toNumber()).toBeCloseTo(2 / 3, 12);
    // Deviations -0.2667, 0.3333, -0.0667: squares sum to 0.18667, over 2 is 0.09333.
    expect(found.standardDeviationGrams?.toNumber()).toBeCloseTo(Math.sqrt(0.28 / 3), 9);
  });

  it('does not take a tin that is too light for filled', () => {
    expect(judge({ netGrams: ['80.4', '80.199', '70'] })).toMatchObject({ tooLight: 2, stillToFill: 11 });
    // Limits of 35 g by SI 2006/659, Schedule 3 (9 % taken up: 3.2 g): 31.8 and 28.6 g. Of 7 tins none may lie below the first.
    const average = { basis: 'average', declaredGrams: 35, wanted: 7, scaleErrorGrams: 0 } as const;
    const six = ['35.2', '35.1', '35.3', '35.2', '31', '25.8'];
    expect(judge({ ...average, netGrams: six })).toMatchObject({ filled: 6, tooLight: 2, stillToFill: 3 });
    // Of 20 one may.
    expect(judge({ ...average, wanted: 20, netGrams: six })).toMatchObject({ tooLight: 1, stillToFill: 15 });
  });

  it('rejects for one tin that may lie below the label by the scale’s error', () => {
    expect(judge({ netGrams: ['80.2', '80.4'] })).toMatchObject({ verdict: 'accept', belowNominal: 0 });
    expect(judge({ netGrams: ['80.199', '80.4'] })).toMatchObject({
      verdict: 'reject',
      belowNominal: 1,
      decidedBy: 'below-nominal',
    });
  });

  it('has no deviation for a single tin, and is full when more than wanted are filled', () => {
    expect(judge({ netGrams: ['81'] }).standardDeviationGrams).toBeNull();
    expect(judge({ netGrams: repeat(13, 81) })).toMatchObject({ stillToFill: 0, filled: 13 });
  });

  it('by the average way counts a light tin against the whole run, and once over against what was filled', () => {
    const average = { basis: 'average', wanted: 20, netGrams: ['75', '85.1', '80'] } as const;
    expect(judge(average)).toMatchObject({ verdict: 'accept', belowLimit1: 1, decidedBy: 'all-rules' });
    expect(judge({ ...average, wanted: 19 })).toMatchObject({
      verdict: 'reject',
      decidedBy: 'below-limit-1',
    });
    expect(judge({ ...average, isOver: true })).toMatchObject({ verdict: 'reject', stillToFill: 0 });
  });

  it('by the average way allows one in forty from 100 tins on', () => {
    const light = (count: number) => [...repeat(count, 75), ...repeat(120 - count, 81)];
    expect(judge({ basis: 'average', wanted: 120, netGrams: light(3) })).toMatchObject({ verdict: 'accept' });
    expect(judge({ basis: 'average', wanted: 120, netGrams: light(4) })).toMatchObject({ verdict: 'reject' });
  });

  it('judges a tin too small for the average system by the minimum way, and says so', () => {
    expect(judge({ basis: 'average', declaredGrams: 4, netGrams: [4.3, 4.1] })).toMatchObject({
      judgedBy: 'minimum',
      limits: null,
      verdict: 'reject',
      isScaleFineEnough: null,
    });
  });

  it('tells whether the scale is fine enough: at most a fifth of the tolerable error', () => {
    expect(judge({ scaleErrorGrams: '0.9' }).isScaleFineEnough).toBe(true);
    expect(judge({ scaleErrorGrams: '0.901' }).isScaleFineEnough).toBe(false);
  });

  it.each([
    [{ netGrams: [80, 0] }, 'value-not-above', 'netGrams[1]'],
    [{ wanted: 1.5 }, 'wanted-not-whole', 'wanted'],
    [{ wanted: 0 }, 'wanted-not-whole', 'wanted'],
    [{ declaredGrams: -80 }, 'value-not-above', 'declaredGrams'],
    [{ scaleErrorGrams: -1 }, 'mass-negative', 'scaleErrorGrams'],
  ])('refuses %j', (change, code, where) => {
    expect(judgeRun({ ...run, ...change }, netContentsTables)).toMatchObject({ problems: [{ code, where }] });
  });
});
