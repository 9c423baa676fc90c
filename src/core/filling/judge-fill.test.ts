import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { type Fill, findAim, judgeFill } from './judge-fill.ts';

const tin: Fill = { declaredGrams: 80, basis: 'minimum', netGrams: 81, scaleErrorGrams: 0.2 };
const judge = (fill: Partial<Fill>) => {
  const { verdict, surelyGrams, gramsToAdd, gramsToSpare } = must(judgeFill({ ...tin, ...fill }));
  return [verdict, surelyGrams.toFixed(), gramsToAdd.toFixed(), gramsToSpare.toFixed()];
};

describe('verdict of one tin', () => {
  it('counts the scale’s error against the maker, to the last digit', () => {
    expect(judge({ netGrams: '80.2' })).toEqual(['inside', '80', '0', '0']);
    expect(judge({ netGrams: '80.199' })).toEqual(['too-light', '79.999', '0.001', '0']);
  });

  it('says how much to add', () => {
    expect(judge({ netGrams: '78.9' })).toEqual(['too-light', '78.7', '1.3', '0']);
  });

  it('calls a tin heavy above the aim by more than a twentieth of the label', () => {
    expect(judge({ netGrams: '84.2' })).toEqual(['inside', '84', '0', '0']);
    expect(judge({ netGrams: '84.21' })).toEqual(['heavy', '84.01', '0', '4.01']);
    expect(judge({ netGrams: '84.21', aimGrams: 82 })).toEqual(['inside', '84.01', '0', '0']);
  });

  it('does not let a low aim pass for the label', () => {
    expect(judge({ netGrams: '84.21', aimGrams: 50 })[0]).toBe('heavy');
  });

  it('by the average way lets a tin lie down to limit 1, and fills up to the label', () => {
    const average = { basis: 'average', tolerableErrorGrams: 4.5 } as const;
    expect(judge({ ...average, netGrams: '75.7' })).toEqual(['inside', '75.5', '0', '0']);
    expect(judge({ ...average, netGrams: '75.69' })).toEqual(['too-light', '75.49', '4.51', '0']);
  });

  it('by the average way without a tolerable error lets nothing lie below the label', () => {
    expect(judge({ basis: 'average', tolerableErrorGrams: null, netGrams: '80.1' })[0]).toBe('too-light');
  });

  it.each([
    [{ netGrams: -1 }, 'value-not-above', 'netGrams'],
    [{ declaredGrams: 0 }, 'value-not-above', 'declaredGrams'],
    [{ scaleErrorGrams: '-0.1' }, 'mass-negative', 'scaleErrorGrams'],
  ])('refuses %j', (fill, code, where) => {
    expect(judgeFill({ ...tin, ...fill })).toMatchObject({ ok: false, problems: [{ code, where }] });
  });
});

describe('aim of a tin', () => {
  it.each([
    ['0.2', '0.1', '80.2'],
    ['0.25', '0.1', '80.3'],
    ['0.2', '1', '81'],
    ['0', '1', '80'],
  ])('with an error of %s g on a step of %s g is %s g', (error, step, aim) => {
    expect(findAim(80, error, step).toFixed()).toBe(aim);
  });
});
