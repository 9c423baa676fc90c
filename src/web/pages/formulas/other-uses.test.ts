import { describe, expect, it } from 'vitest';
import { formulas } from '../../../contract/index.ts';
import { chosenUses, OTHER_USE_CHOICES, withChosen } from './other-uses.ts';

const other = { use: 'rinse-off', category: '7A', bodyPart: 'hair', productType: 'shampoo' } as const;

describe('other uses of a product', () => {
  it('are ticked, and each is a use that the contract takes', () => {
    const all = OTHER_USE_CHOICES.map(({ id }) => id);
    const uses = withChosen([], all);
    expect(chosenUses(uses)).toEqual(all);
    expect(uses.every((use) => formulas.productUse.safeParse(use).success)).toBe(true);
  });

  it('go by unticking, and what has no box here stays', () => {
    const uses = withChosen([other], ['face', 'hands']);
    expect(withChosen(uses, ['hands'])).toEqual([...withChosen([], ['hands']), other]);
    expect(chosenUses([other])).toEqual([]);
  });
});
