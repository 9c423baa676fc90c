import type { z } from 'zod';
import type { making, orders } from '../../src/contract/index.ts';
import { baseLine, buildBase, buildMixture, buildReport, line, step } from './build-formula.ts';
import { buildIngredient, buildLot, buildPackaging } from './build-stock.ts';
import type { TestWorkshop } from './open-test-workshop.ts';

type Product = z.input<typeof orders.productDetails>;
type Part = 'shea' | 'oil' | 'scent' | 'tin' | 'lid' | 'label' | 'smallTin';

/**
 * A bench on which everything is there: a base of two fats, a mixture with an oil whose linalool has to be named, tins
 * of two sizes, a report, three scales. Recipes and figures are invented.
 */
export interface MakingBench {
  readonly materials: Readonly<Record<Part, string>>;
  readonly lots: Readonly<Record<Part, string>>;
  readonly scales: Readonly<Record<'bench' | 'middle' | 'small', string>>;
  readonly base: string;
  readonly baseRevision: string;
  readonly mixture: string;
  readonly mixtureRevision: string;
  readonly product: string;
  readonly smallProduct: string;
}

export async function buildMakingBench(
  bench: TestWorkshop,
  { isDecided = true }: { readonly isDecided?: boolean } = {},
): Promise<MakingBench> {
  const scales = {
    bench: await buildScale(bench, 'Bench scale', '5000', '1'),
    middle: await buildScale(bench, 'Middle scale', '2000', '0.1'),
    small: await buildScale(bench, 'Small scale', '200', '0.01'),
  };
  const materials = await buildMaterials(bench);
  const lots = await buildLots(bench, materials);
  const base = await buildBase(
    bench,
    [line(materials.shea, '650', { stage: 'Melt' }), line(materials.oil, '350', { stage: 'Cool' })],
    {
      name: 'Quiet base',
      code: 'QB',
      details: {
        steps: [
          step('melt', 'Melt in a water bath', { stage: 'Melt', leastCelsius: '68', mostCelsius: '75' }),
          step('set', 'Cover and let it set', { stage: 'Set' }),
        ],
      },
    },
  );
  const mixture = await buildMixture(
    bench,
    [baseLine(base.formulaId, '990', { stage: 'Whip' }), line(materials.scent, '10', { stage: 'Scent' })],
    {
      name: 'Lavender butter',
      code: 'LB',
      details: { steps: [step('whip', 'Whip until pale', { stage: 'Whip' })] },
    },
  );
  await buildReport(bench, {
    reviewBy: '2028-10-01',
    baseFormulaId: base.formulaId,
    formulaIds: [mixture.formulaId],
    ranges: [
      { materialId: materials.shea, leastPercent: '50', mostPercent: '75' },
      { materialId: materials.oil, leastPercent: '20', mostPercent: '45' },
      { materialId: materials.scent, leastPercent: '0', mostPercent: '1.5' },
    ],
  });
  if (isDecided) await acceptUnknowns(bench, mixture.revisionId);
  return {
    materials,
    lots,
    scales,
    base: base.formulaId,
    baseRevision: base.revisionId,
    mixture: mixture.formulaId,
    mixtureRevision: mixture.revisionId,
    product: await buildProduct(bench, mixture.formulaId, materials),
    smallProduct: await buildProduct(bench, mixture.formulaId, materials, {
      name: 'Lavender butter, small',
      declaredGrams: '20',
      tinId: materials.smallTin,
    }),
  };
}

/** A named person accepts whatever no source tells of this revision. */
export async function acceptUnknowns(bench: TestWorkshop, revisionId: string): Promise<void> {
  const params = { id: revisionId };
  const { open } = await bench.get('checkRevision', { params, query: { markets: 'GB,NI' } });
  for (const { key } of open) {
    const body = { key, verdict: 'accepted' as const, reason: 'As the assessor reads it.' };
    await bench.get('decideUnknown', { params, body });
  }
}

const LINALOOL = {
  name: 'Linalool',
  cas: '78-70-6',
  leastPercent: '20',
  typicalPercent: '30',
  mostPercent: '40',
  source: 'invented for the test',
  confidence: 'supplier' as const,
};

async function buildMaterials(bench: TestWorkshop): Promise<MakingBench['materials']> {
  const part = (name: string, packagingKind: 'tin' | 'lid' | 'label', tareGrams: string | null) =>
    buildPackaging(bench, { name, packagingKind, tareGrams, brimMl: null });
  return {
    shea: await buildIngredient(bench, { name: 'Shea butter', inciEu: 'Butyrospermum Parkii Butter' }),
    oil: await buildIngredient(bench, { name: 'Sunflower oil', inciEu: 'Helianthus Annuus Seed Oil' }),
    scent: await buildIngredient(bench, {
      name: 'Lavender oil',
      inciEu: 'Lavandula Angustifolia Oil',
      botanical: 'Lavandula angustifolia',
      plantPart: 'herb',
      process: 'distilled',
      role: 'fragrance',
      constituents: [LINALOOL],
    }),
    tin: await part('60 ml tin', 'tin', '11.4'),
    lid: await part('Lid', 'lid', '6'),
    label: await part('Label pair', 'label', null),
    smallTin: await part('30 ml tin', 'tin', '8.2'),
  };
}

async function buildLots(
  bench: TestWorkshop,
  materials: MakingBench['materials'],
): Promise<MakingBench['lots']> {
  const lot = (part: Part, quantity: string, bestBefore: string | null, paid: string) =>
    buildLot(bench, materials[part], { quantity, bestBefore, paid });
  return {
    shea: await lot('shea', '2000', '2027-09-30', '30'),
    oil: await lot('oil', '1000', '2027-08-31', '8'),
    scent: await lot('scent', '50', '2027-06-30', '10'),
    tin: await lot('tin', '40', null, '16'),
    lid: await lot('lid', '40', null, '6'),
    label: await lot('label', '60', null, '6'),
    smallTin: await lot('smallTin', '40', null, '12'),
  };
}

export async function buildScale(
  bench: TestWorkshop,
  name: string,
  capacityGrams: string,
  readabilityGrams: string,
  more: { readonly accuracyClass?: 'II' | 'III'; readonly verificationIntervalGrams?: string } = {},
): Promise<string> {
  const scale = {
    name,
    capacityGrams,
    readabilityGrams,
    repeatabilityGrams: null,
    accuracyClass: null,
    verificationIntervalGrams: null,
    ...more,
  };
  return (await bench.get('saveScale', { body: { scale } })).id;
}

export async function buildProduct(
  bench: TestWorkshop,
  formulaId: string,
  materials: MakingBench['materials'],
  more: Partial<Product> = {},
): Promise<string> {
  const details: Product = {
    name: 'Lavender butter',
    formulaId,
    declaredGrams: '35',
    tinId: materials.tin,
    lidId: materials.lid,
    labelId: materials.label,
    aimGrams: null,
    fillBasis: 'minimum',
    bowlLossPercent: '3',
    retainedGrams: '10',
    markets: ['GB', 'NI'],
    functionText: 'Body butter',
    precautions: 'For outward use only.',
    bestBeforeMonths: 12,
    openedMonths: 6,
    price: '9.50',
    faceMm: { shape: 'round', width: 60, height: 60 },
    backMm: { shape: 'round', width: 60, height: 60 },
    isWithdrawn: false,
    ...more,
  };
  return (await bench.get('saveProduct', { body: { details } })).id;
}

export type BatchWish = z.input<typeof making.batchWish>;

export const inGrams = (revisionId: string, grams: string, more: Partial<BatchWish> = {}): BatchWish => ({
  revisionId,
  purpose: 'sale',
  markets: ['GB', 'NI'],
  size: { by: 'grams', grams },
  ...more,
});

export const inTins = (
  revisionId: string,
  tins: readonly { readonly productId: string; readonly units: number }[],
  more: Partial<BatchWish> = {},
): BatchWish => ({
  revisionId,
  purpose: 'sale',
  markets: ['GB', 'NI'],
  size: { by: 'tins', tins: [...tins], retained: { keep: true, grams: '10' } },
  ...more,
});

/** Weighs in whatever is not done, each on its target, and ticks every step. */
export async function makeAll(bench: TestWorkshop, batchId: string): Promise<void> {
  const params = { id: batchId };
  const { screens } = await bench.get('getBatch', { params });
  for (const screen of screens.filter((one) => one.done === null)) {
    const { position } = screen;
    if (screen.kind === 'step') {
      const body = { position, celsius: null, minutes: null, remark: '' };
      await bench.get('recordStep', { params, body });
    } else {
      const { lotId, scaleId, leftGrams } = screen;
      // Where the work has gone on, it is asked what was done differently.
      const isLate = screens.some(
        (one) =>
          one.screen > screen.screen &&
          one.done !== null &&
          (one.kind === 'step' || one.stage !== screen.stage),
      );
      const deviation = isLate ? { deviation: { what: 'Weighed late', why: 'It was overlooked' } } : {};
      const body = { position, lotId: lotId ?? '', scaleId, actualGrams: leftGrams, ...deviation };
      await bench.get('recordAddition', { params, body });
    }
  }
}

/** Starts, makes and finishes a batch; `lossGrams` stays in the bowl. Answers its view. */
export async function makeBatch(bench: TestWorkshop, wish: BatchWish, lossGrams = 1) {
  const { id } = await bench.get('startBatch', { body: { wish } });
  await makeAll(bench, id);
  const { screens } = await bench.get('getBatch', { params: { id } });
  const input = screens.reduce(
    (sum, screen) => (screen.kind === 'addition' ? sum + Number(screen.done?.actualGrams) : sum),
    0,
  );
  const yieldGrams = (input - lossGrams).toFixed(2);
  return bench.get('finishBatch', { params: { id }, body: { yieldGrams } });
}

/** A base that somebody has said is firm; answers its lot. */
export async function makeFirmBase(bench: TestWorkshop, shop: MakingBench, grams: string): Promise<string> {
  const made = await makeBatch(bench, inGrams(shop.baseRevision, grams));
  const id = made.lotId ?? '';
  await bench.get('sayFirm', { params: { id }, body: { remark: 'Firm early in the cold.' } });
  return id;
}

/** A formula of one material, for sale; answers its revision. */
export async function buildRevisionOf(
  bench: TestWorkshop,
  name: string,
  code: string,
  materialId: string,
): Promise<string> {
  return (await buildMixture(bench, [line(materialId, '100')], { name, code })).revisionId;
}

/** The base's next revision, with these grams of shea and oil. */
export async function reviseBase(
  bench: TestWorkshop,
  shop: MakingBench,
  [shea, oil]: readonly [string, string],
): Promise<void> {
  const params = { id: shop.base };
  const { latest } = await bench.get('getFormula', { params });
  if (!latest) throw new Error('the base has a revision');
  const grams = [shea, oil];
  const lines = latest.details.lines.map((each, index) => ({ ...each, grams: grams[index] ?? each.grams }));
  const body = { version: latest.version, details: { ...latest.details, lines } };
  await bench.get('saveRevision', { params, body });
}
