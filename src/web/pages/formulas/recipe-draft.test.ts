import { describe, expect, it } from 'vitest';
import {
  detailsOf,
  draftOf,
  emptyLine,
  emptyStep,
  percentOf,
  totalGrams,
  withMaterial,
} from './recipe-draft.ts';

const blank = draftOf({
  id: 'f',
  version: 1,
  name: 'Any',
  code: 'AN',
  kind: 'base',
  revisions: [],
  inForceId: null,
  soldIn: [],
  latest: null,
});
const withGrams = (...grams: string[]) => ({
  ...blank,
  lines: grams.map((typed) => ({ ...emptyLine('Melt'), item: 'material:m', grams: typed })),
});

describe('recipe draft', () => {
  it('shows each line in percent of what is typed so far', () => {
    const draft = withGrams('600', '350', '50');
    expect(totalGrams(draft)).toBe('1000');
    expect(draft.lines.map((line) => percentOf(line, draft))).toEqual(['60', '35', '5']);
  });

  it('counts what cannot be read as nothing, and says no percent of nothing', () => {
    const draft = withGrams('12,5', '');
    expect(totalGrams(draft)).toBe('0');
    expect(percentOf(draft.lines[0] ?? emptyLine(''), draft)).toBe('');
  });

  it('sends what cannot be read as it was typed, so that it is named and not lost', () => {
    expect(detailsOf(withGrams('12,5')).lines[0]?.grams).toBe('12,5');
  });

  it('sends empty figures of a step as not said', () => {
    const details = detailsOf({
      ...blank,
      steps: [{ ...emptyStep('Melt'), what: 'Melt', leastCelsius: '70' }],
    });
    expect(details.steps[0]).toMatchObject({ leastCelsius: '70', mostCelsius: null, minutes: null });
  });

  it('takes one typed setting time as both ends of the range', () => {
    expect(detailsOf({ ...blank, settingLeast: '12' }).settingHours).toEqual({ least: 12, most: 12 });
    expect(detailsOf(blank).settingHours).toBeNull();
  });
});

describe('a material that was just entered', () => {
  it('goes into the first line without one, else into a line of its own', () => {
    const [empty, full] = [emptyLine('Melt'), { ...emptyLine('Melt'), item: 'material:a', grams: '5' }];
    expect(withMaterial([full, empty], 'b').map((line) => line.item)).toEqual(['material:a', 'material:b']);
    expect(withMaterial([full], 'b').map(({ item, stage }) => [item, stage])).toEqual([
      ['material:a', 'Melt'],
      ['material:b', 'Melt'],
    ]);
    expect(withMaterial([], 'b').map((line) => line.item)).toEqual(['material:b']);
  });
});
