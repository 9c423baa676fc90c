import { type BenchHand, benchHand } from '../example/bench-hand.ts';
import { makeAndFill, makeBase } from '../example/make-and-fill.ts';
import { must } from '../src/core/problem.ts';
import { realMachine } from '../src/machine/index.ts';
import { type Context, openDoors, openWorkshop, useCases } from '../src/work/index.ts';
import { type Figure, quantile, timesOf } from './measure.ts';
import { lastSeq, readStory, retell } from './retell-entries.ts';
import { inFolder } from './running-program.ts';
import { buildShop, receiveAll, receiveLot, type Shop } from './shop.ts';

/** Told once through the use-cases: a base and 24 butters of it, filled, released and sent. */
const BATCHES_TOLD = 25;
const TIMES_TOLD = 80;
/** One tub of lavender oil lasts for so many tellings. */
const TELLINGS_A_TUB = 8;
const OIL = 'Lavender';

async function sellOne(hand: BenchHand, shop: Shop): Promise<void> {
  const filling = { formulaId: shop.butter, productId: shop.product, scaleId: shop.smallScale };
  const run = await makeAndFill(hand, { ...filling, units: 2, tareGrams: '11.4', over: [8, 12] });
  await hand.write('releaseRun', { verdict: 'released', reason: '' }, { id: run });
  const { id } = await hand.write('saveOrder', {
    customerId: null,
    placedOn: hand.dateIn(0),
    wantedBy: hand.dateIn(7),
    note: '',
    lines: [{ productId: shop.product, units: 2 }],
  });
  await hand.write('dispatchOrder', { tracking: '' }, { id });
}

async function tellOnce(hand: BenchHand, shop: Shop): Promise<void> {
  const others = new Map([...shop.materials].filter(([name]) => name !== OIL));
  await receiveAll(hand, others, { grams: 5000, pieces: 100 });
  const base = await makeBase(hand, shop.base, 3000, 8);
  await hand.write('sayFirm', { remark: 'Set in the cold.' }, { id: base });
  for (let batch = 1; batch < BATCHES_TOLD; batch += 1) await sellOne(hand, shop);
}

interface Told {
  /** A tub that went into hundreds of tins, and the tins of one run. */
  readonly oilLot: string;
  readonly tins: string;
}

/** 2,000 batches: 25 through the use-cases, the others as the same told again under ids of their own. */
async function tellYears(context: Context): Promise<Told> {
  const signing = benchHand(context);
  signing.at(-5, 8);
  const begin = async (name: string, firstPerson: string) =>
    must(await openDoors(signing.context, { name, firstPerson, isExample: false }));
  const hand = { ...signing, begin };
  const shop = await buildShop(hand);
  const oil = shop.materials.get(OIL) ?? '';
  const tubs: string[] = [];
  for (let nth = 0; nth < TIMES_TOLD; nth += TELLINGS_A_TUB) tubs.push(await receiveLot(hand, oil, 500));
  const [firstTub = ''] = tubs;
  const before = lastSeq(context.storage);
  await tellOnce(hand, shop);
  const story = readStory(context.storage, before);
  const tubOf = (nth: number): string => tubs[Math.floor(nth / TELLINGS_A_TUB)] ?? '';
  for (let nth = 1; nth < TIMES_TOLD; nth += 1)
    retell(context.storage, story, nth, new Map([[firstTub, tubOf(nth)]]));
  const lots = story.rows.find(([table]) => table === 'lot')?.[1] ?? [];
  const tins = lots.find((row) => row.item_kind === 'product')?.id;
  return { oilLot: tubOf(TIMES_TOLD - 1), tins: `${tins}-${TIMES_TOLD - 1}` };
}

async function traceFrom(context: Context, id: string) {
  return must(await useCases.traceLot(context, { params: { id }, query: undefined, body: undefined }));
}

async function timeTraces(context: Context, { oilLot, tins }: Told): Promise<readonly Figure[]> {
  const batches = must(
    await useCases.listBatches(context, { params: {}, query: undefined, body: undefined }),
  );
  const ahead = await traceFrom(context, oilLot);
  const behind = await traceFrom(context, tins);
  if (ahead.orders.length < 100 || behind.madeOf.length < 20) throw new Error('the trace found too little');
  const forward = await timesOf(() => traceFrom(context, oilLot), 31);
  const back = await timesOf(() => traceFrom(context, tins), 31);
  const among = `among ${batches.length} batches`;
  const figure = (name: string, times: readonly number[]): Figure => ({
    name: `trace ${among}: ${name}`,
    value: quantile(times, 0.5),
    unit: 'ms',
    beside: 'aim 20',
  });
  return [
    figure(`an oil forward to ${ahead.wentInto.length} lots, ${ahead.orders.length} orders`, forward),
    figure(`a tin back to ${behind.madeOf.length} lots, with its cost`, back),
  ];
}

async function inWorkshop<T>(folder: string, work: (context: Context) => Promise<T>): Promise<T> {
  const context = must(await openWorkshop({ folder, machine: realMachine }));
  try {
    return await work(context);
  } finally {
    await context.storage.close();
  }
}

export async function benchTrace(): Promise<readonly Figure[]> {
  return inFolder(async (folder) => {
    const told = await inWorkshop(folder, (context) => {
      // Nothing of it is kept: only the building is hastened, traces write nothing.
      context.storage.handle.pragma('synchronous = OFF');
      return tellYears(context);
    });
    // Opened anew: closing brought the log of so many writes into the file, as it is after any day's work.
    return inWorkshop(folder, (context) => timeTraces(context, told));
  });
}
