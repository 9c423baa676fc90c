import { describe, expect, it } from 'vitest';
import { baseLine, buildBase, line } from '../../../test/workshop/build-formula.ts';
import {
  buildMakingBench,
  inGrams,
  makeBatch,
  makeFirmBase,
  reviseBase,
} from '../../../test/workshop/build-making.ts';
import { openTestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { listLotsAtHand, type NamedRevisionLine } from '../../storage/index.ts';
import { findOlderBases, isSameComposition } from './older-bases.ts';

const lines = (...grams: readonly [item: string, grams: string][]): NamedRevisionLine[] =>
  grams.map(([item_id, amount], position) => ({
    revision_id: 'r',
    position,
    stage: 'Melt',
    item_kind: 'material',
    item_id,
    item_name: item_id,
    grams: amount,
  }));

describe('the same composition', () => {
  it('is told whatever size it was written for, and in whatever order', () => {
    expect(
      isSameComposition(lines(['shea', '1'], ['oil', '2']), lines(['oil', '66.6'], ['shea', '33.3'])),
    ).toBe(true);
  });

  it('is told where an item stands on two lines', () => {
    expect(
      isSameComposition(
        lines(['shea', '60'], ['oil', '40']),
        lines(['shea', '30'], ['oil', '40'], ['shea', '30']),
      ),
    ).toBe(true);
  });

  it('is another with a microgram moved, or an item exchanged', () => {
    const first = lines(['shea', '60'], ['oil', '40']);
    expect(isSameComposition(first, lines(['shea', '60.000001'], ['oil', '39.999999']))).toBe(false);
    expect(isSameComposition(first, lines(['shea', '60'], ['cocoa', '40']))).toBe(false);
    expect(isSameComposition(first, [])).toBe(false);
  });
});

describe('a base made with another base', () => {
  it('is older once that one is made differently, at whatever depth, though its own lines stay as they are', async () => {
    const bench = await openTestWorkshop();
    const shop = await buildMakingBench(bench);
    await makeFirmBase(bench, shop, '900');
    const made: string[] = [];
    let inner = shop.base;
    for (const name of ['Second base', 'Third base']) {
      const lines = [baseLine(inner, '80'), line(shop.materials.oil, '20')];
      const built = await buildBase(bench, lines, { name, code: name.slice(0, 2).toUpperCase() });
      const wish = inGrams(built.revisionId, made.length === 0 ? '500' : '200', { purpose: 'trial' });
      const id = (await makeBatch(bench, wish)).lotId ?? '';
      await bench.get('sayFirm', { params: { id }, body: { remark: 'Firm early.' } });
      made.push(id);
      inner = built.formulaId;
    }
    const older = async () => [...(await findOlderBases(bench.context.storage.db, await lots()))].sort();
    const lots = () => listLotsAtHand(bench.context.storage.db, { lotIds: made });
    expect(await older()).toEqual([]);
    await reviseBase(bench, shop, ['130', '70']);
    expect(await older()).toEqual([]);
    await reviseBase(bench, shop, ['660', '340']);
    expect(await older()).toEqual([...made].sort());
    await bench.close();
  });
});
