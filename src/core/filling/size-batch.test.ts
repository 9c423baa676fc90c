import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { type BatchWish, limitBatchGrams, sizeBatch } from './size-batch.ts';

const wish: BatchWish = {
  lines: [{ key: 'small', wanted: 40, aimGrams: '30.2' }],
  bowlLossFraction: 0.02,
  retainedGrams: 15,
  limits: [],
};
const size = (change: Partial<BatchWish>) => must(sizeBatch({ ...wish, ...change }));
const shea = (availableGrams: string) =>
  ({ kind: 'material', key: 'm1', name: 'Shea butter', availableGrams, shareOfBatch: '0.5' }) as const;
const tins = (availablePieces: number) =>
  ({ kind: 'tins', key: 't1', name: 'Tin 30', availablePieces, perUnit: { small: 1 } }) as const;
const bowl = (availableGrams: number) =>
  ({ kind: 'bowl', key: 'bowl', name: 'Bowl', availableGrams, shareOfBatch: 1 }) as const;

describe('size of a batch', () => {
  it('is tins at the aim, retained sample and what the bowl keeps', () => {
    const found = size({});
    // (40 x 30.2 + 15) / 0.98 = 1247.959184 g, up to the next microgram.
    expect(found.batchGrams.toFixed()).toBe('1247.959184');
    expect(found.tinsGrams.plus(found.retainedGrams).plus(found.lossGrams).eq(found.batchGrams)).toBe(true);
    expect(found).toMatchObject({ limitedBy: { kind: 'order' }, bounds: [] });
  });

  it('is taken up to the step that is asked for', () => {
    expect(size({ stepGrams: '0.1' }).batchGrams.toFixed()).toBe('1248');
  });

  it('lets a material that just suffices suffice, and names it a microgram below', () => {
    expect(size({ limits: [shea('623.979592')] })).toMatchObject({ limitedBy: { kind: 'order' } });
    expect(size({ limits: [shea('623.979591')] })).toMatchObject({
      limitedBy: { kind: 'material', name: 'Shea butter' },
      lines: [{ key: 'small', wanted: 40, possible: 39 }],
    });
  });

  it('names the tightest of several limits and tells what each would allow', () => {
    const found = size({ limits: [shea('500'), tins(35), bowl(600)] });
    // 600 x 0.98 - 15 = 573 g: 18 tins; 500 g of shea make 1000 g: 965 g, 31 tins.
    expect(found.limitedBy).toEqual({ kind: 'bowl', key: 'bowl', name: 'Bowl' });
    expect(found.bounds.map(({ kind, units }) => [kind, units])).toEqual([
      ['bowl', 18],
      ['material', 31],
      ['tins', 35],
    ]);
    expect(found.lines[0]?.possible).toBe(18);
  });

  it('serves the first line first where tins are shared', () => {
    const lines = [
      { key: 'rose', wanted: 10, aimGrams: 80 },
      { key: 'plain', wanted: 10, aimGrams: 80 },
    ];
    const shared = { ...tins(14), perUnit: { rose: 1, plain: 1 } };
    expect(size({ lines, limits: [shared] }).lines.map(({ possible }) => possible)).toEqual([10, 4]);
  });

  it('fills smaller tins with what is too little for a larger one', () => {
    const lines = [
      { key: 'large', wanted: 2, aimGrams: 200 },
      { key: 'small', wanted: 5, aimGrams: 30 },
    ];
    const found = size({ lines, bowlLossFraction: 0, retainedGrams: 0, limits: [bowl(290)] });
    expect(found.lines.map(({ possible }) => possible)).toEqual([1, 3]);
  });

  it('makes nothing at all where not one tin can be filled', () => {
    const found = size({ limits: [tins(0)] });
    expect(found).toMatchObject({ limitedBy: { kind: 'tins' }, lines: [{ possible: 0 }] });
    expect(found.batchGrams.isZero()).toBe(true);
  });

  it.each([
    [{ lines: [] }, 'no-tins-wanted'],
    [{ bowlLossFraction: 1 }, 'share-out-of-range'],
    [{ bowlLossFraction: -0.1 }, 'share-out-of-range'],
    [{ retainedGrams: -1 }, 'mass-negative'],
    [{ lines: [{ key: 'a', wanted: 0, aimGrams: 30 }] }, 'wanted-not-whole'],
    [{ lines: [{ key: 'a', wanted: 1, aimGrams: 0 }] }, 'value-not-above'],
    [{ limits: [{ ...shea('10'), shareOfBatch: 0 }] }, 'share-out-of-range'],
    [{ limits: [shea('-1')] }, 'mass-negative'],
  ])('refuses %j', (change, code) => {
    expect(sizeBatch({ ...wish, ...change })).toMatchObject({ ok: false, problems: [{ code }] });
  });

  it('keeps every limit, and could not fill one tin more', () => {
    const cases = fc.tuple(
      fc.integer({ min: 1, max: 60 }),
      fc.integer({ min: 0, max: 2_000_000 }).map((n) => (n / 1000).toFixed(3)),
      fc.integer({ min: 0, max: 60 }),
    );
    fc.assert(
      fc.property(cases, ([wanted, available, pieces]) => {
        const lines = [{ key: 'small', wanted, aimGrams: '30.2' }];
        const limits = [shea(available), tins(pieces)];
        const found = size({ lines, limits });
        const possible = found.lines[0]?.possible ?? 0;
        expect(found.batchGrams.times('0.5').lte(available) && possible <= pieces).toBe(true);
        if (possible < wanted) {
          const oneMore = size({ lines: [{ ...lines[0]!, wanted: possible + 1 }] });
          expect(oneMore.batchGrams.times('0.5').gt(available) || possible + 1 > pieces).toBe(true);
        }
      }),
    );
  });
});

describe('batch by grams', () => {
  it('stays as wanted, or goes down to what the tightest mass allows', () => {
    expect(must(limitBatchGrams({ wantedGrams: 900, limits: [shea('450'), tins(0)] }))).toMatchObject({
      limitedBy: { kind: 'order' },
    });
    const found = must(
      limitBatchGrams({ wantedGrams: 900, limits: [shea('400'), bowl(750)], stepGrams: 0.1 }),
    );
    expect([found.batchGrams.toFixed(), found.limitedBy.name]).toEqual(['750', 'Bowl']);
  });

  it('refuses a batch of nothing', () => {
    expect(limitBatchGrams({ wantedGrams: 0, limits: [] })).toMatchObject({
      problems: [{ code: 'value-not-above' }],
    });
  });
});
