import { describe, expect, it } from 'vitest';
import { type BatchLoss, judgeLoss, learnLoss } from './learn-loss.ts';

const lost = (...grams: readonly string[]): BatchLoss[] =>
  grams.map((lostGrams) => ({ inGrams: '100', lostGrams }));
const told = (learnt: ReturnType<typeof learnLoss>) =>
  learnt && [learnt.from, learnt.percent.toFixed(), learnt.batches];

describe('the loss that is learnt', () => {
  it('is the middle one of the last five of this formula, whatever a bad day did', () => {
    const own = lost('3.14', '1', '24', '2', '4', '20');
    const learnt = learnLoss(own, own);
    expect(told(learnt)).toEqual(['formula', '3.1', 5]);
    expect([learnt?.leastPercent.toFixed(), learnt?.mostPercent.toFixed()]).toEqual(['1', '24']);
  });

  it('is the workshop’s while the formula has fewer than three, and lies between two where they are even', () => {
    expect(told(learnLoss(lost('9', '9'), lost('9', '9', '2', '4')))).toEqual(['workshop', '6.5', 4]);
  });

  it('is none of fewer than three batches', () => {
    expect(learnLoss(lost('3'), lost('3', '2'))).toBeNull();
  });

  it('is nought where the weighings’ errors let more come out than went in', () => {
    expect(told(learnLoss(lost('-1', '-2', '-1'), []))).toEqual(['formula', '0', 3]);
  });

  it('learns nothing of a batch that lost more than a quarter: it was thrown away, or never filled', () => {
    expect(learnLoss(lost('100', '100', '100'), lost('100', '100', '100'))).toBeNull();
    expect(told(learnLoss(lost('100', '25', '25', '25'), []))).toEqual(['formula', '25', 3]);
    expect(learnLoss(lost('25.000001', '25', '25'), [])).toBeNull();
  });

  it('leaves a batch out that nothing went into', () => {
    expect(learnLoss([...lost('3', '2'), { inGrams: '0', lostGrams: '0' }], [])).toBeNull();
  });
});

describe('a loss beside what is expected', () => {
  const judge = (lostGrams: string, mostPercent: string | null = null, percent = '3') =>
    judgeLoss({ inGrams: '100', lostGrams }, { percent, mostPercent });

  it('is abnormal above the greatest so far, and not exactly there', () => {
    expect(judge('9', '9').isAbnormal).toBe(false);
    expect(judge('9.000001', '9').isAbnormal).toBe(true);
    expect(judge('9.000001', '9').moreGrams.toFixed()).toBe('6.000001');
  });

  it('is abnormal from half as much again, and a percent more at least', () => {
    expect([judge('4.5').isAbnormal, judge('4.500001').isAbnormal]).toEqual([false, true]);
    expect([judge('1.5', null, '0.5').isAbnormal, judge('1.500001', null, '0.5').isAbnormal]).toEqual([
      false,
      true,
    ]);
  });
});
