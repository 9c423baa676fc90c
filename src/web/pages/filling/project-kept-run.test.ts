import { describe, expect, it } from 'vitest';
import type { KeptEntry } from '../../away/kept-entry.ts';
import { projectKeptRun } from './project-kept-run.ts';
import type { Run } from './run.ts';

const RUN = {
  id: 'run',
  way: 'mean',
  tareGrams: '11.4',
  tinGrams: '11.4',
  tares: [],
  tareSpreadGrams: null,
  declaredGrams: '35',
  aimGrams: '35.2',
  fillBasis: 'minimum',
  tolerableErrorGrams: '3.2',
  limit1Grams: '31.8',
  limit2Grams: '28.6',
  errorGrams: '0.11',
  scale: { id: 's', name: 'Small', readabilityGrams: '0.01', worstErrorGrams: '0.01' },
  bowlLeftGrams: '180',
  wanted: 5,
  weights: [],
  ready: { area: null, containers: null, issued: null },
  summary: { filled: 0, tooLight: 0, stillToFill: 5, bowlHolds: 5, putAside: 0 },
} as unknown as Run;

const entry = (id: string, route: string, body: object, run = 'run'): KeptEntry =>
  ({
    id,
    route,
    params: { id: run },
    body: { ...body, stamp: { by: 'ada' } },
    at: '2026-11-26T08:00:00Z',
  }) as unknown as KeptEntry;
const project = (...kept: readonly KeptEntry[]) => projectKeptRun(RUN, kept, () => 'Ada');

describe('a run with what lies on this tablet only', () => {
  it('has its tins judged as the workshop would, and counts them', () => {
    const run = project(
      entry('a', 'recordFill', { grossGrams: '46.6' }),
      entry('b', 'recordFill', { grossGrams: '46.5' }),
    );
    expect(run.weights.map(({ number, netGrams, verdict, by }) => [number, netGrams, verdict, by])).toEqual([
      [1, '35.2', 'inside', 'Ada'],
      [2, '35.1', 'too-light', 'Ada'],
    ]);
    expect(run.summary).toMatchObject({ filled: 2, tooLight: 1, stillToFill: 4, counting: 1, bowlHolds: 3 });
    expect(run.bowlLeftGrams).toBe('109.7');
  });

  it('knows a tin that was filled up, and one that was put aside', () => {
    const run = project(
      entry('a', 'recordFill', { grossGrams: '46.5' }),
      entry('b', 'recordFill', { grossGrams: '46.6', refillOf: 'a' }),
      entry('c', 'recordFill', { grossGrams: '46.5' }),
      entry('d', 'strikeFill', { entryId: 'c', reason: 'Tried', fate: 'trial' }),
    );
    expect(run.weights.map(({ number, isRefilled, fate }) => [number, isRefilled, fate])).toEqual([
      [1, true, null],
      [1, false, null],
      [2, false, 'trial'],
    ]);
    // 180 less 35.2 in the tin and 35.1 that went out to be tried.
    expect(run.bowlLeftGrams).toBe('109.7');
    expect(run.summary).toMatchObject({ filled: 1, putAside: 1 });
  });

  it('takes what was said before the first tin, and another way of weighing', () => {
    const run = project(
      entry('a', 'prepareRun', { word: { kind: 'area', isClear: true } }),
      entry('b', 'changeFillWay', { way: 'own' }),
      entry('c', 'recordFill', { grossGrams: '46.5', tareGrams: '11.45' }),
    );
    expect(run.ready.area).toMatchObject({ isClear: true, by: 'Ada' });
    expect(run.weights[0]).toMatchObject({
      way: 'own',
      netGrams: '35.05',
      errorGrams: '0.01',
      verdict: 'inside',
    });
  });

  it('takes off a tin that is filled up what was taken off it before, in whatever way others are weighed by then', () => {
    const run = project(
      entry('a', 'recordFill', { grossGrams: '46.5' }),
      entry('b', 'changeFillWay', { way: 'own' }),
      entry('c', 'recordFill', { grossGrams: '46.6', refillOf: 'a' }),
    );
    expect(run.weights[1]).toMatchObject({
      way: 'mean',
      tareGrams: '11.4',
      netGrams: '35.2',
      errorGrams: '0.11',
    });
  });

  it('leaves other runs and what arrived meanwhile alone', () => {
    const known = project(entry('a', 'recordFill', { grossGrams: '46.6' }));
    const again = [
      entry('a', 'recordFill', { grossGrams: '46.6' }),
      entry('x', 'recordFill', { grossGrams: '46.6' }, 'other'),
    ];
    expect(projectKeptRun(known, again, () => 'Ada')).toEqual(known);
  });
});
