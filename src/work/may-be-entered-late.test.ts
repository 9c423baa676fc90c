import { describe, expect, it } from 'vitest';
import { mayBeEnteredLate } from './may-be-entered-late.ts';

describe('what may be entered after all', () => {
  it.each(['recordAddition', 'recordStep', 'recordFill', 'strikeAddition', 'strikeFill'])(
    'is %s, which was done at the bench',
    (name) => {
      expect(mayBeEnteredLate(name)).toBe(true);
    },
  );

  it.each([
    'finishBatch',
    'abandonBatch',
    'decideWorstCase',
    'closeRun',
    'releaseRun',
    'startBatch',
    'startRun',
    'savePerson',
    'getBatch',
    'stirTheMoon',
  ])('is not %s', (name) => {
    expect(mayBeEnteredLate(name)).toBe(false);
  });
});
