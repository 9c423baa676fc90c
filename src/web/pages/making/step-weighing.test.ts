import { describe, expect, it } from 'vitest';
import { cupSoFar, readWeighing } from './step-weighing.ts';

const draft = { gross: '155', tare: '45', cupMl: '200', unwhipped: '' };

describe('what a step weighs', () => {
  it('is nothing where nothing is typed', () => {
    expect(readWeighing({ gross: '', tare: '', cupMl: ' ', unwhipped: '' }, true)).toBeNull();
    expect(readWeighing({ gross: '', tare: '', cupMl: '200', unwhipped: '' }, false)).toBeNull();
  });

  it('tells of a full cup as soon as its figures are there', () => {
    expect(cupSoFar(readWeighing(draft, true))?.densityGramsPerMl.toFixed()).toBe('0.55');
    expect(cupSoFar(readWeighing({ ...draft, cupMl: '' }, true))).toBeUndefined();
    expect(cupSoFar(readWeighing({ ...draft, gross: '1,5' }, true))).toBeUndefined();
    expect(cupSoFar(readWeighing({ ...draft, unwhipped: '100' }, true))).toBeUndefined();
  });

  it('goes on as typed where it cannot be read, so that the workshop names it', () => {
    expect(readWeighing({ ...draft, gross: 'abc', tare: '' }, false)).toEqual({
      grossGrams: 'abc',
      tareGrams: '0',
      cupMl: null,
      unwhippedGrams: null,
    });
  });
});
