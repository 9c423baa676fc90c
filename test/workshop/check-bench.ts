import { afterEach, beforeEach } from 'vitest';
import { buildIngredient } from './build-stock.ts';
import { openTestWorkshop, type TestWorkshop } from './open-test-workshop.ts';

/** Invented, as are all figures here. */
export const constituent = (name: string, cas: string, most: string) => ({
  name,
  cas,
  leastPercent: '0',
  typicalPercent: '0.1',
  mostPercent: most,
  source: 'invented for the test',
  confidence: 'supplier' as const,
});

/** What a report allows of a material. */
export const ranges = (materialId: string, leastPercent: string, mostPercent: string) => ({
  materialId,
  leastPercent,
  mostPercent,
});

/** A workshop with shea butter for each test, and the hands that check a revision in it. */
export function openCheckBench() {
  let bench: TestWorkshop;
  let fat: string;
  beforeEach(async () => {
    bench = await openTestWorkshop();
    fat = await buildIngredient(bench, { name: 'Shea butter', inciEu: 'Butyrospermum Parkii Butter' });
  });
  afterEach(() => bench.close());

  /** An oil of the tables, with constituents of our own, so that one figure decides. */
  const buildOil = (constituents: ReturnType<typeof constituent>[], more: object = {}) =>
    buildIngredient(bench, {
      name: 'Orange oil',
      inciEu: 'Citrus Aurantium Dulcis Peel Oil',
      cas: ['8008-57-9'],
      plantPart: 'peel',
      process: 'expressed',
      botanical: 'Citrus sinensis',
      role: 'fragrance',
      constituents,
      ...more,
    });
  const check = (id: string, markets = 'GB,NI') =>
    bench.get('checkRevision', { params: { id }, query: { markets } });
  const codesOfReasons = async (id: string, markets?: string) =>
    (await check(id, markets)).reasons.map((reason) => reason.code);
  return {
    get bench() {
      return bench;
    },
    get fat() {
      return fat;
    },
    buildOil,
    check,
    codesOfReasons,
  };
}
