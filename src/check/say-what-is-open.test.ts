import { describe, expect, it } from 'vitest';
import { saying } from '../contract/index.ts';
import { formulaSayings } from '../words/sayings/formulas.en-gb.ts';
import { sayWhatIsOpen } from './say-what-is-open.ts';

describe('what is not known', () => {
  it('is the figure that is missing, not the substance that it is of', () => {
    const why = saying('unknown-needs-certificate', {
      substance: 'limonene',
      hasWhat: true,
      asWhat: 'peroxide value',
    });
    expect(sayWhatIsOpen(why)).toBe('the peroxide value of limonene');
    expect(sayWhatIsOpen(saying('unknown-rest', { substance: 'Sweet orange oil' }))).toBe(
      'what else is in Sweet orange oil',
    );
  });

  it('has words for every reason that a question has', () => {
    const reasons = Object.keys(formulaSayings).filter((code) => code.startsWith('unknown-'));
    expect(reasons.length).toBeGreaterThan(10);
    for (const code of reasons)
      expect(
        sayWhatIsOpen(saying(code, { substance: 'X', asWhat: 'Y', hasWhat: true, material: 'Z' })),
      ).toMatch(/X|federal/);
  });
});
