import { describe, expect, it } from 'vitest';
import { fillingWords } from '../../../words/index.ts';
import { findKnownTare } from './find-known-tare.ts';

const tins = [
  { id: 'small', details: { tareGrams: '8.2' } },
  { id: 'large', details: { tareGrams: null } },
];

describe('what is taken off where no weight of the empty tin is given', () => {
  it('is the weight that the tin is known to have, and the hint names it', () => {
    const tare = findKnownTare('small', tins);
    expect(tare).toBe('8.2');
    expect(fillingWords.tareHint(tare)).toContain('8.2\u00a0g is taken off');
    expect(fillingWords.tareHint(tare)).not.toContain('weighed empty');
  });

  it('is each tin weighed empty where nobody knows its weight, or which tin it is', () => {
    expect(findKnownTare('large', tins)).toBeNull();
    expect(findKnownTare(undefined, tins)).toBeNull();
    expect(fillingWords.tareHint(null)).toContain('each tin is weighed empty first');
  });
});
