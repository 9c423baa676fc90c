import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact, sumOf } from '../quantity/index.ts';
import { type LineToResize, resizeBatch } from './resize-batch.ts';

const line = (key: string, exactGrams: string, inGrams: string, more: Partial<LineToResize> = {}) => ({
  key,
  group: key,
  exactGrams,
  inGrams,
  isDone: inGrams !== '0',
  ...more,
});

const resized = (lines: readonly LineToResize[], key: string) => {
  const result = resizeBatch(lines, key);
  if (!result.ok) throw new Error(result.problems[0]?.code);
  return result.value;
};
const shown = (lines: readonly LineToResize[], key: string) =>
  resized(lines, key).lines.map(({ exactGrams, leftGrams, overGrams }) => [
    exactGrams.toString(),
    leftGrams.toString(),
    overGrams.toString(),
  ]);

describe('a batch made as large as what is in of one line', () => {
  it('asks for more of all the others, in their shares', () => {
    // 520 + 280 + 8 g; 546 g of the first went in, a twentieth more: 294 and 8.4 g.
    const lines = [line('a', '520', '546'), line('b', '280', '280'), line('c', '8', '0')];
    expect(shown(lines, 'a')).toEqual([
      ['546', '0', '0'],
      ['294', '14', '0'],
      ['8.4', '8.4', '0'],
    ]);
    expect(resized(lines, 'a').totalGrams.toString()).toBe('848.4');
  });

  it('asks for less where there is no more of a line, and tells what is in too much then', () => {
    const lines = [line('a', '520', '260'), line('b', '280', '280'), line('c', '8', '0')];
    expect(shown(lines, 'a')).toEqual([
      ['260', '0', '0'],
      ['140', '0', '140'],
      ['4', '4', '0'],
    ]);
  });

  it('takes less of the second lot first where the same thing comes of two', () => {
    const first = line('a', '300', '310', { group: 'shea' });
    const second = line('b', '220', '0', { group: 'shea' });
    expect(shown([first, second, line('c', '280', '0')], 'a')).toEqual([
      ['310', '0', '0'],
      ['210', '210', '0'],
      ['280', '280', '0'],
    ]);
  });

  it('takes more of the second lot where the first gave too little', () => {
    const first = line('a', '300', '250', { group: 'shea' });
    const second = line('b', '220', '0', { group: 'shea' });
    expect(shown([first, second], 'a').map(([asked]) => asked)).toEqual(['250', '270']);
  });

  it('asks for nothing more of the second lot where the first gave all of both, or more, and goes on from there', () => {
    const second = line('b', '40', '0', { group: 'shea' });
    const oil = line('c', '100', '0');
    expect(shown([line('a', '60', '100', { group: 'shea' }), second, oil], 'a')).toEqual([
      ['100', '0', '0'],
      ['0', '0', '0'],
      ['100', '100', '0'],
    ]);
    // 105 of 100 g in all: a twentieth more of the oil.
    expect(shown([line('a', '60', '105', { group: 'shea' }), second, oil], 'a')).toEqual([
      ['105', '0', '0'],
      ['0', '0', '0'],
      ['105', '105', '0'],
    ]);
    const after = [
      line('a', '105', '105', { group: 'shea' }),
      line('b', '0', '0', { group: 'shea', isDone: true }),
      line('c', '105', '126'),
    ];
    expect(shown(after, 'c').map(([asked, left]) => [asked, left])).toEqual([
      ['126', '21'],
      ['0', '0'],
      ['126', '0'],
    ]);
  });

  it('cannot go by a line of which nothing is in, or that is not there', () => {
    expect(resizeBatch([line('a', '520', '0')], 'a')).toMatchObject({ ok: false });
    expect(resizeBatch([line('a', '520', '5')], 'x')).toMatchObject({
      ok: false,
      problems: [{ code: 'resize-of-nothing', where: 'x' }],
    });
    expect(resizeBatch([line('a', '0', '5')], 'a')).toMatchObject({
      ok: false,
      problems: [{ code: 'value-not-above' }],
    });
  });

  it('holds every percentage, whatever is in', () => {
    const ug = fc.integer({ min: 1, max: 5_000_000_000 }).map((n) => exact(n).div(1_000_000).toString());
    const lines = fc.array(fc.record({ exactGrams: ug, inGrams: ug, isDone: fc.boolean() }), {
      minLength: 1,
      maxLength: 8,
    });
    fc.assert(
      fc.property(lines, fc.nat(), (rows, nth) => {
        const given = rows.map((row, index) => ({ ...row, key: String(index), group: String(index) }));
        const key = String(nth % given.length);
        const { lines: after, totalGrams } = resized(given, key);
        const total = sumOf(given.map(({ exactGrams }) => exactGrams));
        for (const [index, each] of after.entries()) {
          const before = given[index];
          // Cross-multiplied: share before = share after. 60 digits carry the quotient, 1e-40 g2 is far below any scale.
          const off = each.exactGrams.times(total).minus(totalGrams.times(before?.exactGrams ?? 0));
          expect(off.abs().lt('1e-40')).toBe(true);
          expect(
            each.exactGrams
              .plus(each.overGrams)
              .minus(each.leftGrams)
              .minus(before?.inGrams ?? 0)
              .abs()
              .lt('1e-40'),
          ).toBe(true);
        }
        expect(after[Number(key)]?.exactGrams.toString()).toBe(
          exact(given[Number(key)]?.inGrams ?? 0).toString(),
        );
      }),
    );
  });
});
