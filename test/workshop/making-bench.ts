import { afterEach, beforeEach } from 'vitest';
import type { z } from 'zod';
import type { making } from '../../src/contract/index.ts';
import { buildMakingBench, inGrams, type MakingBench } from './build-making.ts';
import { openTestWorkshop, type TestWorkshop } from './open-test-workshop.ts';

export type Started = z.output<typeof making.batchView>;

/** A bench with materials and recipes for each test, and the hands that start a base and weigh it in. */
export function openMakingBench() {
  let bench: TestWorkshop;
  let shop: MakingBench;
  async function begin(more: { readonly isDecided?: boolean } = {}): Promise<void> {
    bench = await openTestWorkshop();
    shop = await buildMakingBench(bench, more);
  }
  beforeEach(() => begin());
  afterEach(() => bench.close());

  const onHand = async (id: string): Promise<string> =>
    (await bench.get('getLot', { params: { id } })).lot.onHand;
  const startBase = (grams = '800') =>
    bench.get('startBatch', { body: { wish: inGrams(shop.baseRevision, grams) } });

  function additionAt(batch: Started, position: number) {
    const screen = batch.screens.find((one) => one.kind === 'addition' && one.position === position);
    if (screen?.kind !== 'addition') throw new Error(`there is no addition ${position}`);
    return screen;
  }
  const weigh = (batch: Started, position: number, actualGrams: string, more: object = {}) => {
    const { lotId, scaleId } = additionAt(batch, position);
    const body = { position, lotId: lotId ?? '', scaleId, actualGrams, ...more };
    return bench.ask('recordAddition', { params: { id: batch.id }, body });
  };

  return {
    /** Over again, where the bench of this test has to be another. */
    async beginAnew(more: { readonly isDecided?: boolean }): Promise<void> {
      await bench.close();
      await begin(more);
    },
    get bench() {
      return bench;
    },
    get shop() {
      return shop;
    },
    onHand,
    startBase,
    additionAt,
    weigh,
  };
}
