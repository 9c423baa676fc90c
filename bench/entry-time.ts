import { performance } from 'node:perf_hooks';
import { makeBase } from '../example/make-and-fill.ts';
import { type Figure, fsyncMs, quantile } from './measure.ts';
import { inFolder, type RunningProgram, withProgram } from './running-program.ts';
import { buildShop, receiveAll } from './shop.ts';

/** Batches of 25 lines; the first ones warm the program up and are not counted. */
const WARM = 2;
const COUNTED = 10;

/** Weighs a trial batch in, one entry after another; milliseconds of each, from the request to its durable answer. */
async function weighBatch(program: RunningProgram, revisionId: string): Promise<number[]> {
  const { id, screens } = await program.write('startBatch', {
    wish: { revisionId, purpose: 'trial', markets: ['GB'], size: { by: 'grams', grams: '1000' } },
  });
  const times: number[] = [];
  for (const screen of screens) {
    if (screen.kind !== 'addition') continue;
    const { position, lotId, scaleId, targetGrams: actualGrams } = screen;
    const body = { position, lotId: lotId ?? '', scaleId, actualGrams };
    const start = performance.now();
    await program.write('recordAddition', body, { id });
    times.push(performance.now() - start);
  }
  return times;
}

/** So many tablets at work at once. */
const CLIENTS = 4;

interface Times {
  readonly entries: number[];
  /** With all clients at work, each on a batch of its own. */
  readonly together: number[];
  readonly fsyncs: number[];
}

async function weighTogether(program: RunningProgram, revisionId: string): Promise<number[]> {
  const clients = Array.from({ length: CLIENTS }, () => weighBatch(program, revisionId));
  return (await Promise.all(clients)).flat();
}

async function weighBatches(program: RunningProgram): Promise<Times> {
  const shop = await buildShop(program);
  await receiveAll(program, shop.materials, { grams: 50_000, pieces: 100 });
  const base = await makeBase(program, shop.base, 20_000, 8);
  await program.write('sayFirm', { remark: 'Set in the cold.' }, { id: base });
  for (let batch = 0; batch < WARM; batch += 1) await weighBatch(program, shop.butterRevision);
  const entries: number[] = [];
  const together: number[] = [];
  const fsyncs: number[] = [];
  for (let batch = 0; batch < COUNTED; batch += 1) {
    // In turn, so that both see the same disk and the same company on the machine.
    fsyncs.push(fsyncMs());
    entries.push(...(await weighBatch(program, shop.butterRevision)));
    if (batch < COUNTED / CLIENTS) together.push(...(await weighTogether(program, shop.butterRevision)));
  }
  return { entries, together, fsyncs };
}

/** A making entry over HTTP against one write with fsync on the same disk. */
export async function benchMakingEntry(): Promise<readonly Figure[]> {
  const { entries, together, fsyncs } = await inFolder((folder) => withProgram(folder, weighBatches));
  const fsync = quantile(fsyncs, 0.5);
  const median = quantile(entries, 0.5);
  const name = `making entry over HTTP, ${entries.length / COUNTED} lines in the batch`;
  return [
    { name: 'one write of 4 kB with fsync', value: fsync, unit: 'ms', beside: 'baseline, median' },
    { name: `${name}: median`, value: median, unit: 'ms', beside: '' },
    { name: `${name}: 99th percentile`, value: quantile(entries, 0.99), unit: 'ms', beside: '' },
    { name: `${name}: median against the fsync`, value: median / fsync, unit: 'times', beside: 'aim 5' },
    { name: `${CLIENTS} clients at work: median`, value: quantile(together, 0.5), unit: 'ms', beside: '' },
    {
      name: `${CLIENTS} clients at work: 99th percentile`,
      value: quantile(together, 0.99),
      unit: 'ms',
      beside: '',
    },
  ];
}
