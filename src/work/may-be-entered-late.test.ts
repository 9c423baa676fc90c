import { describe, expect, it } from 'vitest';
import { mayBeEnteredLate } from './may-be-entered-late.ts';

describe('what may be entered after all', () => {
  it.each([
    'recordAddition',
    'recordStep',
    'recordFill',
    'strikeAddition',
    'strikeFill',
    'countLot',
    'recordScaleCheck',
  ])('is %s, which was done at the bench', (name) => {
    expect(mayBeEnteredLate(name)).toBe(true);
  });

  it.each([
    'finishBatch',
    'finishWithoutRecipe',
    'resizeBatch',
    'moveLot',
    'saveScale',
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
