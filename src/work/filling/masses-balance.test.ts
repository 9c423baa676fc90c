import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  buildMakingBench,
  inGrams,
  type MakingBench,
  makeAll,
  makeFirmBase,
} from '../../../test/workshop/build-making.ts';
import { clearArea } from '../../../test/workshop/clear-area.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';

/** What somebody does next, with two numbers from 0 to 1 that say how much and on which. */
interface Deed {
  readonly what: 'start' | 'weigh' | 'strike' | 'make' | 'finish' | 'abandon' | 'run' | 'fill' | 'close';
  readonly much: number;
  readonly which: number;
}
const share = fc.integer({ min: 0, max: 1000 }).map((thousandths) => thousandths / 1000);
const deeds: fc.Arbitrary<Deed[]> = fc.array(
  fc.record({
    what: fc.constantFrom<Deed['what']>(
      ...(['start', 'weigh', 'weigh', 'strike', 'make', 'make', 'finish', 'finish', 'abandon'] as const),
      ...(['run', 'run', 'fill', 'fill', 'fill', 'fill', 'close', 'close'] as const),
    ),
    much: share,
    which: share,
  }),
  { minLength: 10, maxLength: 24 },
);

const pick = <Thing>(things: readonly Thing[], which: number): Thing | undefined =>
  things[Math.min(things.length - 1, Math.floor(which * things.length))];

/** What is there to do something on: a batch in the making with its screens, a bowl, a run that is open. */
async function lookAround(bench: TestWorkshop, which: number) {
  const batches = await bench.get('listBatches');
  const runs = await bench.get('listRuns');
  const making = pick(
    batches.filter((batch) => batch.state === 'making'),
    which,
  );
  const made = pick(
    batches.filter((batch) => batch.state === 'made' && batch.formulaKind === 'mixture'),
    which,
  );
  const filling = pick(
    runs.filter((run) => run.state === 'filling'),
    which,
  );
  const screens = making ? (await bench.get('getBatch', { params: { id: making.id } })).screens : [];
  return { making, made, filling, additions: screens.filter((screen) => screen.kind === 'addition') };
}
type Around = Awaited<ReturnType<typeof lookAround>>;
type Hand = (bench: TestWorkshop, around: Around, much: number, shop: MakingBench) => Promise<unknown>;

const onBatch = ({ making }: Around) => ({ params: { id: making?.id ?? '' } });
const onRun = ({ filling }: Around) => ({ params: { id: filling?.id ?? '' } });

/** A refusal is an answer too, and must change nothing. */
const FATES = ['bowl', 'trial', 'binned', 'slip', null] as const;

const HANDS: Readonly<Record<Deed['what'], Hand>> = {
  start: (bench, _around, much, shop) =>
    bench.ask('startBatch', {
      body: { wish: inGrams(shop.mixtureRevision, (50 + much * 150).toFixed(1)) },
    }),
  weigh: async (bench, around, much) => {
    const open = pick(
      around.additions.filter((screen) => screen.done === null),
      much,
    );
    if (!open) return;
    const actualGrams = (Number(open.targetGrams) * (0.9 + much * 0.2)).toFixed(2);
    const deviation = { what: 'By eye', why: 'In a hurry' };
    const body = { position: open.position, lotId: open.lotId ?? '', scaleId: null, actualGrams, deviation };
    await bench.ask('recordAddition', { ...onBatch(around), body });
  },
  strike: async (bench, around, much) => {
    const weight = pick(around.filling?.weights ?? [], much);
    const done = pick(around.additions, much)?.done;
    const body = { entryId: weight?.entryId ?? done?.entryId ?? '', reason: 'Wrong' };
    const fate = FATES[Math.floor(much * FATES.length)] ?? null;
    if (weight) await bench.ask('strikeFill', { ...onRun(around), body: { ...body, fate } });
    else await bench.ask('strikeAddition', { ...onBatch(around), body });
  },
  make: async (bench, { making }) => making && makeAll(bench, making.id),
  finish: (bench, around, much) => {
    const input = around.additions.reduce(
      (total, screen) => total + Number(screen.done?.actualGrams ?? 0),
      0,
    );
    const body = { yieldGrams: Math.max(0.01, input * (0.9 + much * 0.11)).toFixed(2) };
    return bench.ask('finishBatch', { ...onBatch(around), body });
  },
  abandon: async (bench, around, much) => {
    if (much > 0.7) await bench.ask('abandonBatch', { ...onBatch(around), body: { reason: 'Burnt' } });
  },
  run: async (bench, { made }, much, shop) => {
    const productId = much > 0.5 ? shop.product : shop.smallProduct;
    const scaleId = shop.scales.small;
    const body = { batchId: made?.id ?? '', productId, wanted: 3, scaleId, tareGrams: '8' };
    const run = await bench.ask('startRun', { body });
    if (run.ok) await clearArea(bench, run.value.id);
  },
  fill: (bench, around, much) => {
    const gross = Number(around.filling?.aimGrams ?? 30) + 8 + much - 0.05;
    const body = { grossGrams: gross.toFixed(2), tareGrams: null, sure: ['reading-same-as-last'] };
    return bench.ask('recordFill', { ...onRun(around), body });
  },
  close: (bench, around, much) => {
    const { filled = 0, meanGrams } = around.filling?.summary ?? {};
    const left = Number(around.filling?.bulkOnHandGrams ?? 0) - filled * Number(meanGrams ?? 0) - 2.5;
    const body = {
      retained:
        much > 0.5 ? { keep: true as const, grams: '2.5' } : { keep: false as const, reason: 'None left' },
      leftGrams: Math.max(0, left * much * 1.05).toFixed(2),
      spoiltLabels: Math.round(much * 2),
    };
    return bench.ask('closeRun', { ...onRun(around), body });
  },
};

async function carryOut(bench: TestWorkshop, shop: MakingBench, { what, much, which }: Deed): Promise<void> {
  await HANDS[what](bench, await lookAround(bench, which), much, shop);
}

type Movement = Awaited<ReturnType<typeof readMovements>>[number];
const readMovements = ({ context }: TestWorkshop) =>
  context.storage.db.selectFrom('movement').selectAll().execute();

const sum = (rows: readonly { readonly quantity: number }[]): number =>
  rows.reduce((total, row) => total + row.quantity, 0);
const outOf = (rows: readonly Movement[], ...kinds: readonly string[]): number =>
  0 - sum(rows.filter((row) => kinds.includes(row.kind)));

/** All in whole micrograms and pieces, straight from the ledger: what the views say is not asked. */
function expectNothingOverdrawn(moves: readonly Movement[]): void {
  const standing = new Map<string, number>();
  for (const row of moves) {
    const key = `${row.lot_id} ${row.place_id}`;
    standing.set(key, (standing.get(key) ?? 0) + row.quantity);
  }
  expect(Math.min(...standing.values())).toBeGreaterThanOrEqual(0);
}

/** What stands weighed in is what left the lots. */
async function expectBowlsFilled({ context }: TestWorkshop, moves: readonly Movement[]): Promise<void> {
  const { db } = context.storage;
  const additions = await db
    .selectFrom('addition')
    .leftJoin('strike', 'strike.struck_entry_id', 'addition.entry_id')
    .select(['addition.batch_id', 'addition.actual_ug as quantity'])
    .where('strike.entry_id', 'is', null)
    .execute();
  for (const batch of await db.selectFrom('batch').selectAll().execute()) {
    const own = moves.filter((row) => row.batch_id === batch.id);
    const weighed = additions.filter((row) => row.batch_id === batch.id);
    expect(outOf(own, 'used', 'returned')).toBe(sum(weighed));
  }
}

/** What a run took of its bowl is in its tins, kept as a sample or lost; nothing else was moved. */
async function expectBowlsEmptied({ context }: TestWorkshop, moves: readonly Movement[]): Promise<number> {
  const { db } = context.storage;
  const weights = await db
    .selectFrom('fill_weight')
    .leftJoin('strike', 'strike.struck_entry_id', 'fill_weight.entry_id')
    .selectAll('fill_weight')
    .where('strike.entry_id', 'is', null)
    .execute();
  const fates = await db
    .selectFrom('tin_fate')
    .innerJoin('strike', 'strike.entry_id', 'tin_fate.entry_id')
    .innerJoin('fill_weight', 'fill_weight.entry_id', 'strike.struck_entry_id')
    .select(['fill_weight.filling_run_id as run', 'gross_ug', 'tare_ug', 'tin_fate.fate'])
    .execute();
  const gone = fates.map((row) => ({ ...row, quantity: row.gross_ug - row.tare_ug }));
  const closes = await db
    .selectFrom('run_close')
    .innerJoin('filling_run', 'filling_run.id', 'run_close.filling_run_id')
    .innerJoin('batch_close', 'batch_close.batch_id', 'filling_run.batch_id')
    .selectAll('run_close')
    .select('batch_close.lot_id as bowl')
    .execute();
  for (const close of closes) {
    const own = moves.filter((row) => row.filling_run_id === close.filling_run_id);
    const bowl = own.filter((row) => row.lot_id === close.bowl);
    const tins = weights.filter((row) => row.filling_run_id === close.filling_run_id);
    expect(tins).toHaveLength(close.units);
    expect(sum(own.filter((row) => row.lot_id === close.lot_id))).toBe(close.units);
    expect(outOf(bowl, 'used')).toBe(tins.reduce((net, row) => net + row.gross_ug - row.tare_ug, 0));
    const aside = (fate: string) =>
      sum(gone.filter((row) => row.run === close.filling_run_id && row.fate === fate));
    expect(outOf(bowl, 'binned')).toBe(close.lost_ug + aside('binned'));
    expect(outOf(bowl, 'tester')).toBe(aside('trial'));
    expect(bowl.filter((row) => row.kind === 'moved' && row.quantity > 0).map((row) => row.quantity)).toEqual(
      close.retained_ug === null ? [] : [close.retained_ug],
    );
    expect(sum(bowl.filter((row) => row.kind === 'moved'))).toBe(0);
  }
  return closes.length;
}

/** So that every run of the property gets as far as closed tins, whatever comes after. */
const PRELUDE: readonly Deed['what'][] = ['start', 'make', 'finish', 'run', 'fill', 'fill', 'fill', 'close'];
const prelude: fc.Arbitrary<Deed[]> = fc
  .array(share, { minLength: PRELUDE.length, maxLength: PRELUDE.length })
  .map((shares) =>
    PRELUDE.map((what, index) => ({ what, much: 0.1 + (shares[index] ?? 0) * 0.4, which: 0.5 })),
  );

it('balances to the microgram whatever is done, in whatever order', async () => {
  let closed = 0;
  await fc.assert(
    fc.asyncProperty(prelude, deeds, async (first, rest) => {
      const bench = await openTestWorkshop();
      try {
        const shop = await buildMakingBench(bench);
        await makeFirmBase(bench, shop, '1500');
        for (const deed of [...first, ...rest]) await carryOut(bench, shop, deed);
        const moves = await readMovements(bench);
        expectNothingOverdrawn(moves);
        await expectBowlsFilled(bench, moves);
        closed += await expectBowlsEmptied(bench, moves);
        expect(await bench.get('checkUp')).toMatchObject({ isSound: true });
      } finally {
        await bench.close();
      }
    }),
    { numRuns: 8 },
  );
  expect(closed).toBeGreaterThan(3);
}, 180_000);
