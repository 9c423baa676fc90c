import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildIngredient, buildLot } from '../../../test/workshop/build-stock.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { exact, gramsFromMicrograms, toText } from '../../core/quantity/index.ts';

type Act =
  | { readonly act: 'take' | 'move'; readonly from: 0 | 1; readonly micrograms: number }
  | { readonly act: 'count'; readonly from: 0 | 1; readonly micrograms: number };

const RECEIVED = 5_000_000;
const place = fc.constantFrom<0 | 1>(0, 1);
const micrograms = fc.integer({ min: 1, max: 2 * RECEIVED });
const acts = fc.array(
  fc.oneof(
    fc.record({ act: fc.constantFrom<'take' | 'move'>('take', 'move'), from: place, micrograms }),
    fc.record({
      act: fc.constant<'count'>('count'),
      from: place,
      micrograms: fc.integer({ min: 0, max: RECEIVED }),
    }),
  ),
  { minLength: 1, maxLength: 25 },
);

const grams = (quantity: number): string => toText(gramsFromMicrograms(quantity));

async function carryOut(
  bench: TestWorkshop,
  id: string,
  places: readonly string[],
  act: Act,
): Promise<boolean> {
  const params = { id };
  const [here, there] = act.from === 0 ? places : [...places].reverse();
  const quantity = grams(act.micrograms);
  const asked =
    act.act === 'count'
      ? await bench.ask('countLot', {
          params,
          body: { placeId: here, grossGrams: quantity, tareGrams: '0', reason: 'Weighed', isGainSure: true },
        })
      : await bench.ask('moveLot', {
          params,
          body: {
            kind: act.act === 'move' ? 'moved' : 'binned',
            quantity,
            fromPlaceId: here,
            ...(act.act === 'move' && { toPlaceId: there }),
            reason: '',
          },
        });
  return asked.ok;
}

/** What the ledger should hold, kept by hand beside it. */
function expectAfter(balance: [number, number], act: Act): boolean {
  const { from, micrograms: quantity } = act;
  if (act.act === 'count') {
    // More than ever came in is refused.
    if (quantity > balance[from] && quantity + (balance[1 - from] ?? 0) > RECEIVED) return false;
    balance[from] = quantity;
    return true;
  }
  if (quantity > balance[from]) return false;
  balance[from] -= quantity;
  if (act.act === 'move') balance[1 - from] = (balance[1 - from] ?? 0) + quantity;
  return true;
}

describe('the ledger of a lot', () => {
  it('adds up after whatever was done, and nothing is ever taken that is not there', async () => {
    await fc.assert(
      fc.asyncProperty(acts, async (sequence) => {
        const bench = await openTestWorkshop();
        const stall = (await bench.get('savePlace', { body: { name: 'Stall', kind: 'stall' } })).id;
        const places = [bench.places.shelf, stall];
        const id = await buildLot(bench, await buildIngredient(bench), { quantity: grams(RECEIVED) });
        const balance: [number, number] = [RECEIVED, 0];
        for (const act of sequence) {
          const isDone = await carryOut(bench, id, places, act);
          expect(isDone).toBe(expectAfter(balance, act));
        }
        const view = await bench.get('getLot', { params: { id } });
        const sum = view.movements.reduce((total, row) => total.plus(row.change), exact(0));
        expect(view.lot.onHand).toBe(grams(balance[0] + balance[1]));
        expect(toText(sum)).toBe(view.lot.onHand);
        const standing = new Map(view.places.map((row) => [row.placeId, row.onHand]));
        places.forEach((placeId, index) => {
          expect(standing.get(placeId) ?? '0').toBe(grams(balance[index as 0 | 1]));
        });
        await bench.close();
      }),
      { numRuns: 25 },
    );
  });
});
