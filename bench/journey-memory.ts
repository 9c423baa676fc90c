import { existsSync, readFileSync } from 'node:fs';
import { makeAndFill, makeBase } from '../example/make-and-fill.ts';
import type { Figure } from './measure.ts';
import { type RunningProgram, withProgram } from './running-program.ts';
import { buildShop, receiveAll } from './shop.ts';

const TINS = 12;

/** From an empty file to sent tins, their papers and their trace, then everything that reads the whole file. */
async function takeJourney(program: RunningProgram): Promise<void> {
  const shop = await buildShop(program);
  const order = await enterOrder(program, shop.product);
  await receiveAll(program, shop.materials, { grams: 5000, pieces: 100 });
  const base = await makeBase(program, shop.base, 3000, 8);
  await program.write('sayFirm', { remark: 'Set in the cold.' }, { id: base });
  const run = await makeAndFill(program, {
    formulaId: shop.butter,
    productId: shop.product,
    units: TINS,
    scaleId: shop.smallScale,
    tareGrams: '11.4',
    over: [8, 12, 5],
  });
  for (const market of ['GB', 'NI'] as const) {
    const print = await program.write('printRunLabels', { market }, { id: run });
    await program.fetch('getLabelPrintPdf', { params: { id: print.id } });
  }
  const released = await program.write('releaseRun', { verdict: 'released', reason: '' }, { id: run });
  await program.write('reserveOrder', {}, { id: order });
  for (const paper of ['getPickList', 'getPackingSlip'] as const)
    await program.fetch(paper, { params: { id: order } });
  await program.write('dispatchOrder', { tracking: '' }, { id: order });
  for (const { id } of await program.read('listBatches'))
    await program.fetch('getBatchSheet', { params: { id } });
  await program.read('traceLot', { params: { id: released.lotId ?? '' } });
  for (const reading of [
    'getMorning',
    'listOrders',
    'getShelf',
    'checkUp',
    'exportJson',
    'exportCsv',
  ] as const)
    await program.fetch(reading);
  await program.fetch('backUp', { body: {} });
}

async function enterOrder(program: RunningProgram, productId: string): Promise<string> {
  const today = new Date().toISOString().slice(0, 10);
  const { id } = await program.write('saveOrder', {
    customerId: null,
    placedOn: today,
    wantedBy: today,
    note: '',
    lines: [{ productId, units: TINS }],
  });
  return id;
}

/** The most that the process ever held, in MB; NaN where the system does not tell (only Linux has /proc). */
function readPeakMegabytes({ process }: RunningProgram): number {
  const file = `/proc/${process.pid}/status`;
  const said = existsSync(file) ? /VmHWM:\s+(\d+) kB/.exec(readFileSync(file, 'utf8'))?.[1] : undefined;
  return said === undefined ? Number.NaN : (Number(said) * 1024) / 1e6;
}

/** Leaves a workshop in `folder`. */
export const benchJourneyMemory = (folder: string): Promise<Figure> =>
  withProgram(folder, async (program) => {
    await takeJourney(program);
    return {
      name: 'peak memory of the program after a whole journey over HTTP',
      value: readPeakMegabytes(program),
      unit: 'MB',
      beside: 'aim 300',
    };
  });
