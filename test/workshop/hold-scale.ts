import type { TestWorkshop } from './open-test-workshop.ts';

/** A scale gets a check weight of 100 g, as exact as it reads. */
export async function giveCheckWeight(bench: TestWorkshop, id: string): Promise<void> {
  const { scales } = await bench.get('getWorkshop');
  const known = scales.find((scale) => scale.id === id);
  if (!known) throw new Error(`there is no scale ${id}`);
  const { check: _, repeatability: __, ...scale } = known;
  await bench.get('saveScale', {
    body: { scale: { ...scale, checkWeightGrams: '100', checkToleranceGrams: '0' } },
  });
}

/** Its check weight of 100 g is put on it. */
export const checkScale = (bench: TestWorkshop, id: string, readingGrams: string) =>
  bench.get('recordScaleCheck', {
    params: { id },
    body: { weightGrams: '100', toleranceGrams: '0', readingGrams },
  });

/** It fails its check. */
export async function holdScale(bench: TestWorkshop, id: string): Promise<void> {
  await giveCheckWeight(bench, id);
  await checkScale(bench, id, '105');
}
