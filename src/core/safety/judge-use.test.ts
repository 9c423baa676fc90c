import { describe, expect, it } from 'vitest';
import { productTypes } from '../../reference/index.ts';
import { findUseContradicted } from './judge-use.ts';

const found = (use: string, category: string, productType = '') =>
  findUseContradicted({ use, category, productType }).map(({ by, allowed }) => [by, allowed]);

/** Categories by the 49th Amendment's guidance, from memory: 5 and 7B stay on, 7A and 9 are rinsed off. */
describe('use, category and product type', () => {
  it.each([
    ['leave-on', '5A', 'body-lotion'],
    ['leave-on', '7B', ''],
    ['rinse-off', '9', 'shower-gel'],
    ['rinse-off', '7A', 'shampoo'],
    ['rinse-off', '3', 'make-up-remover'],
    ['leave-on', '3', 'eye-shadow'],
    ['leave-on', '8', ''],
    ['rinse-off', '6', 'mouthwash'],
  ])('agree: %s, %s, %s', (use, category, type) => expect(found(use, category, type)).toEqual([]));

  it.each([
    ['rinse-off', '5A', '', [['category', 'leave-on']]],
    ['leave-on', '9', '', [['category', 'rinse-off']]],
    ['leave-on', '7A', '', [['category', 'rinse-off']]],
    ['leave-on', '5A', 'soap', [['productType', 'rinse-off']]],
    ['rinse-off', '9', 'body-lotion', [['productType', 'leave-on']]],
    [
      'rinse-off',
      '5A',
      'body-lotion',
      [
        ['category', 'leave-on'],
        ['productType', 'leave-on'],
      ],
    ],
  ])('contradict each other: %s, %s, %s', (use, category, type, expected) =>
    expect(found(use, category, type)).toEqual(expected),
  );

  it('are only told of types that the tables have', () => {
    const known = new Set<string>(productTypes.map(({ id }) => id));
    for (const type of ['body-lotion', 'face-cream', 'hand-cream', 'lip-product', 'lipstick', 'deodorant'])
      expect([type, known.has(type)]).toEqual([type, true]);
    for (const type of ['shower-gel', 'bath-product', 'hand-wash', 'face-wash', 'soap', 'shampoo'])
      expect([type, known.has(type)]).toEqual([type, true]);
  });
});
