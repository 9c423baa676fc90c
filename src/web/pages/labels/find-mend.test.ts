import { describe, expect, it } from 'vitest';
import { findMend } from './find-mend.ts';

const mend = (element: string | null, code = '') => findMend({ element, says: { code } });

describe('where what a label lacks is mended', () => {
  it('is the product for its words, its months and its size', () => {
    expect(['function', 'precautions', 'period-after-opening', 'language'].map((one) => mend(one))).toEqual([
      'product',
      'product',
      'product',
      'product',
    ]);
  });

  it('is the workshop for whoever answers for it, and where', () => {
    expect([mend('responsible-person'), mend('contact'), mend('country-of-origin')]).toEqual([
      'workshop',
      'workshop',
      'workshop',
    ]);
  });

  it('is a material for its name, and the check for what is undecided or cannot be said', () => {
    expect(mend('ingredients', 'label-name-unknown')).toBe('materials');
    expect(mend('ingredients', 'label-allergens-undecided')).toBe('check');
    expect(mend(null, 'label-not-to-be-said')).toBe('check');
  });
});
