import { describe, expect, it } from 'vitest';
import { SHAPES } from '../../parts/tub-shapes.ts';
import { pictureOf } from './picture-of.ts';

describe('the picture of an item on the shelf', () => {
  it.each([
    ['ingredient', null, 'g', 'tub'],
    ['base', null, 'g', 'tub'],
    ['product', null, 'pieces', 'filled-tin'],
    ['packaging', 'tin', 'pieces', 'tin'],
    ['packaging', 'lid', 'pieces', 'lid'],
    ['packaging', 'label', 'pieces', 'label'],
    ['packaging', 'box', 'pieces', 'box'],
    ['packaging', 'other', 'pieces', 'box'],
    ['packaging', null, 'pieces', 'box'],
  ] as const)('of %s, %s, in %s is a %s', (group, packagingKind, unit, picture) => {
    expect(pictureOf({ group, packagingKind, unit })).toBe(picture);
  });

  it('is a different one for each kind, so that nobody takes lids for labels', () => {
    const outlines = Object.values(SHAPES).map((shape) => shape.outline);
    expect(new Set(outlines).size).toBe(outlines.length);
  });
});
