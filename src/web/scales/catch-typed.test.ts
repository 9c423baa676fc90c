import { describe, expect, it } from 'vitest';
import { makeTypedCatcher } from './catch-typed.ts';

const plain = { numberFrom: null, numberLength: null, unit: 'line', stableMark: '', movingMark: '' } as const;

/** Keys one after the other, so many milliseconds apart. */
function type(keys: readonly string[], apartMs: number) {
  const caught = makeTypedCatcher(plain);
  return keys.map((key, index) => caught({ key, atMs: 1000 + index * apartMs }));
}
const readingOf = (text: string, apartMs: number) => type([...text, 'Enter'], apartMs).at(-1);

describe('a scale that types', () => {
  it('is told from a hand by its speed, and its Enter is kept from buttons', () => {
    expect(readingOf('12.34', 5)).toMatchObject({ reading: { grams: '12.34' }, isOfScale: true });
    expect(readingOf('12.34', 45)).toMatchObject({ isOfScale: true });
    expect(readingOf('12.34', 46)).toEqual({ reading: null, isOfScale: false });
  });

  it('may type its unit: converted exactly', () => {
    expect(readingOf('1.5 oz', 3)).toMatchObject({ reading: { grams: '42.5242846875' } });
    expect(readingOf('  -0.5 g', 3)).toMatchObject({ reading: { grams: '-0.5' } });
  });

  it('is not taken for one where a person presses Enter after a pause, or where it is no number', () => {
    const keys = makeTypedCatcher(plain);
    for (const [index, key] of [...'520'].entries()) keys({ key, atMs: index * 10 });
    expect(keys({ key: 'Enter', atMs: 900 })).toEqual({ reading: null, isOfScale: false });
    expect(readingOf('hello', 5)?.reading).toBeNull();
    expect(readingOf('7', 5)?.reading).toBeNull();
  });

  it('starts anew at a key that is none of a reading', () => {
    expect(type(['9', '9', 'Tab', '1', '2', 'Enter'], 5).at(-1)).toMatchObject({ reading: { grams: '12' } });
  });

  it('keeps its keys from the button that has the focus once it is known for one', () => {
    expect(type([...'12.34'], 5).map(({ isOfScale }) => isOfScale)).toEqual([false, false, true, true, true]);
  });
});
