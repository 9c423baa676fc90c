import { describe, expect, it } from 'vitest';
import { pictureLevel } from './picture-level.ts';

describe('pictureLevel', () => {
  it('is the share of the full tub', () => {
    expect(pictureLevel('180', '1000')).toBe(0.18);
  });

  it('is empty at nought and full at the full mark', () => {
    expect(pictureLevel('0', '500')).toBe(0);
    expect(pictureLevel('500', '500')).toBe(1);
  });

  it('never draws over the rim or below the floor', () => {
    expect(pictureLevel('720', '500')).toBe(1);
    expect(pictureLevel('-3', '500')).toBe(0);
  });

  it('draws an empty tub where nothing is known of a full one', () => {
    expect(pictureLevel('0', '0')).toBe(0);
  });
});
