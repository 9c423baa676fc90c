import { describe, expect, it } from 'vitest';
import { type ColumnNeed, shareOutColumns } from './column-widths.ts';

const text = (leastMm: number, mostMm: number): ColumnNeed => ({ leastMm, mostMm, isStretchy: true });
const figures = (leastMm: number, mostMm: number): ColumnNeed => ({ leastMm, mostMm, isStretchy: false });
const fixed = (fixedMm: number): ColumnNeed => ({ leastMm: 99, mostMm: 99, fixedMm, isStretchy: false });

describe('shareOutColumns', () => {
  it('gives what is left over to columns of text, in proportion', () => {
    expect(shareOutColumns([text(10, 20), text(10, 40), figures(10, 10)], 100)).toEqual([30, 60, 10]);
  });

  it('shares a shortage by what each still wants above its widest word', () => {
    expect(shareOutColumns([text(10, 20), text(10, 40)], 40)).toEqual([15, 25]);
  });

  it('goes below the widest words where even they are too wide', () => {
    expect(shareOutColumns([text(30, 40), text(10, 10)], 20)).toEqual([15, 5]);
  });

  it('leaves fixed columns alone and gives the rest to the others', () => {
    expect(shareOutColumns([fixed(25), text(10, 20)], 100)).toEqual([25, 75]);
  });

  it('stretches figures too where there is no text', () => {
    expect(shareOutColumns([figures(10, 10), figures(10, 30)], 80)).toEqual([20, 60]);
  });

  it('throws where fixed columns leave no room: that is a mistake of the program', () => {
    expect(() => shareOutColumns([fixed(90), text(1, 1)], 90)).toThrow(RangeError);
  });
});
