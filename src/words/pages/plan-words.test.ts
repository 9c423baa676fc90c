import { describe, expect, it } from 'vitest';
import { makingWords } from './making.en-gb.ts';

describe('the heading of what stands against a sale', () => {
  it('says why a batch for sale may not start', () => {
    expect(makingWords.hindrances.sale).toBe('Why it may not start for sale');
  });

  it('says of a trial, which may start, what would stop it for sale', () => {
    expect(makingWords.hindrances.trial).toBe('What would stop this batch for sale');
  });
});
