import { describe, expect, it } from 'vitest';
import type { Step } from './batch.ts';
import { weighedBefore, whipStateOf } from './whip-state.ts';

const begun = (load: number, round: number) => ({ entryId: `b${load}.${round}`, load, round });
const whipped = (load: number, round: number, goes: 'on' | 'stop', cups = 0) => ({
  ...{ load, round, goes, cups: Array.from({ length: cups }, () => ({})) },
});
const step = (begunRounds: object[], rounds: object[]) =>
  ({ stepKind: 'whip', done: null, begun: begunRounds, whipped: rounds }) as unknown as Step;

describe('where whipping stands', () => {
  it('begins with the first round of the first load, and goes on from what was looked at', () => {
    expect(whipStateOf(step([], []))).toEqual({ phase: 'ready', load: 1, round: 1 });
    expect(whipStateOf(step([begun(1, 1)], []))).toEqual({ phase: 'running', load: 1, round: 1 });
    expect(whipStateOf(step([begun(1, 1)], [whipped(1, 1, 'on')]))).toEqual({
      phase: 'ready',
      load: 1,
      round: 2,
    });
    expect(whipStateOf(step([begun(1, 1)], [whipped(1, 1, 'stop')]))).toMatchObject({ phase: 'whipped' });
  });

  it('is the same whatever came first from two tablets', () => {
    const rounds = [whipped(2, 1, 'on'), whipped(1, 2, 'stop'), whipped(1, 1, 'on')];
    expect(whipStateOf(step([begun(2, 1), begun(1, 2), begun(1, 1)], rounds))).toEqual({
      phase: 'ready',
      load: 2,
      round: 2,
    });
  });

  it('needs no beginning: a round may be looked at that nobody timed', () => {
    expect(whipStateOf(step([], [whipped(1, 1, 'on')]))).toMatchObject({ phase: 'ready', round: 2 });
  });

  it('compares with the last round of the same load that was weighed', () => {
    const rounds = [whipped(1, 1, 'on', 1), whipped(1, 2, 'on'), whipped(2, 1, 'on', 2)];
    expect(weighedBefore(step([], rounds), { load: 1, round: 3 })).toMatchObject({ load: 1, round: 1 });
    expect(weighedBefore(step([], rounds), { load: 2, round: 1 })).toBeUndefined();
  });
});
