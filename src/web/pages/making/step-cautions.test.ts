import { describe, expect, it } from 'vitest';
import type { Step } from './batch.ts';
import { cautionsOf } from './step-cautions.ts';

const step = (stepKind: Step['stepKind'], more: Partial<Step> = {}) => ({
  ...{ stepKind, leastCelsius: null, mostCelsius: null, what: 'Do it' },
  ...more,
});

describe('what is told before a step', () => {
  it('is, of what is heated, never to leave it, that fat burns, the bath, and water', () => {
    for (const kind of ['melt', 'hold'] as const)
      expect(cautionsOf(step(kind))).toEqual(['not-alone', 'hot-fat', 'water-bath', 'no-water']);
  });

  it('follows the heat where the kind does not say', () => {
    expect(cautionsOf(step('other'))).toEqual([]);
    expect(cautionsOf(step('other', { leastCelsius: '44.9' }))).toEqual([]);
    expect(cautionsOf(step('other', { leastCelsius: '45' }))).toContain('hot-fat');
    expect(cautionsOf(step('mix', { mostCelsius: '60' }))).toContain('no-water');
  });

  it('names dust where the step names a powder', () => {
    expect(cautionsOf(step('mix', { what: 'Stir starch into the oil' }))).toEqual(['dust-cloud']);
  });

  it('is a few lines at most, and nothing where only a scale is read', () => {
    const kinds = ['melt', 'hold', 'cool', 'mix', 'cover', 'set', 'whip', 'weigh', 'cup', 'other'] as const;
    for (const kind of kinds) expect(cautionsOf(step(kind)).length).toBeLessThanOrEqual(4);
    expect(cautionsOf(step('weigh'))).toEqual([]);
  });
});
