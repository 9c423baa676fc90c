import { buildOwnWorkshop } from './own-workshop.ts';
import { inDays, stampBy } from './stamp.ts';
import type { RunningServer } from './start-server.ts';

/** Tins that a batch is sized for. */
export const TINS = 4;

export interface WholeShop {
  readonly person: string;
  /** Sunflower oil: the first lot runs out at the bench, the second one gives the rest. */
  readonly lots: Readonly<Record<'shea' | 'first' | 'second' | 'starch' | 'orange', string>>;
  readonly parts: Readonly<Record<'tin' | 'lid' | 'label', string>>;
  /** On which all is weighed; its check of the day is due. */
  readonly scale: string;
  /** Starts a batch for sale, sized for the tins. */
  startBatch(server: RunningServer): Promise<string>;
}

/** A workshop with all that a whole batch takes: a whipped butter whose method has every kind of wait. Invented. */
export async function buildWholeShop(server: RunningServer): Promise<WholeShop> {
  const shop = await buildOwnWorkshop(server);
  const { materials, person } = shop;
  const stamp = () => stampBy(person);
  const receive = async (materialId: string, quantity: string, days: number) => {
    const bought = { materialId, quantity, bestBefore: inDays(days), paid: '10', accept: true };
    const body = { stamp: stamp(), supplierLot: `S-${quantity}`, ...bought };
    return (await server.call('receiveGoods', { body })).id;
  };
  const lots = {
    shea: await receive(materials.shea, '1000', 300),
    first: await receive(materials.sunflower, '400', 100),
    second: await receive(materials.sunflower, '1000', 300),
    starch: await receive(materials.starch, '200', 300),
    orange: await receive(materials.orange, '50', 300),
  };
  const parts = {
    tin: await receive(materials.tin, '40', 300),
    lid: await receive(materials.lid, '40', 300),
    label: await receive(materials.label, '40', 300),
  };
  await giveCheckWeight(server, person, shop.scales.small);
  const named = { stamp: stamp(), name: 'Whole butter', code: 'WB', kind: 'mixture' };
  const formula = await server.call('saveFormula', { body: named });
  const revision = await server.call('saveRevision', {
    params: { id: formula.id },
    body: { stamp: stamp(), version: null, details: detailsOf(materials) },
  });
  const details = reportOf(formula.id, materials);
  await server.call('saveReport', { body: { stamp: stamp(), details } });
  const product = await server.call('saveProduct', {
    body: { stamp: stamp(), details: productOf(formula.id, materials) },
  });
  await decideAll(server, person, revision.id);
  const tins = [{ productId: product.id, units: TINS }];
  const size = { by: 'tins', tins, retained: { keep: true, grams: '10' } };
  const wish = { revisionId: revision.id, purpose: 'sale', markets: ['GB', 'NI'], size };
  return {
    person,
    lots,
    parts,
    scale: shop.scales.small,
    startBatch: async (at) => (await at.call('startBatch', { body: { stamp: stamp(), wish } })).id,
  };
}

async function giveCheckWeight(server: RunningServer, person: string, id: string): Promise<void> {
  const { scales } = await server.call('getWorkshop');
  const scale = scales.find((each) => each.id === id);
  if (!scale) throw new Error('the workshop has no such scale');
  const { name, capacityGrams, readabilityGrams, version } = scale;
  const { repeatabilityGrams, accuracyClass, verificationIntervalGrams } = scale;
  const known = { repeatabilityGrams, accuracyClass, verificationIntervalGrams };
  const weight = { checkWeightGrams: '100', checkToleranceGrams: '0.005' };
  const body = { id, version, name, capacityGrams, readabilityGrams, ...known, ...weight };
  await server.call('saveScale', { body: { stamp: stampBy(person), scale: body } });
}

async function decideAll(server: RunningServer, person: string, id: string): Promise<void> {
  const { open } = await server.call('checkRevision', { params: { id }, query: { markets: 'GB,NI' } });
  for (const { key } of open) {
    const body = { stamp: stampBy(person), key, verdict: 'accepted', reason: 'In the report' };
    await server.call('decideUnknown', { params: { id }, body });
  }
}

type Materials = Awaited<ReturnType<typeof buildOwnWorkshop>>['materials'];

const line = (stage: string, itemId: string, grams: string) => ({
  stage,
  itemKind: 'material',
  itemId,
  grams,
});
const step = (stage: string, kind: string, what: string, more: object = {}) => ({
  stage,
  kind,
  what,
  leastCelsius: null,
  mostCelsius: null,
  minutes: null,
  caution: '',
  ...more,
});
/** Six seconds: the shortest time that a timer counts, which tells tenths of a minute. */
const HELD = { leastCelsius: '70', mostCelsius: '75', minutes: '0.1' };

const detailsOf = (m: Materials) => ({
  use: 'leave-on',
  category: '5A',
  bodyPart: 'body',
  productType: 'body-lotion',
  minAgeMonths: null,
  standing: 'for-sale',
  note: '',
  settingHours: null,
  keepMonths: null,
  lines: [
    line('Melt', m.shea, '600'),
    line('Cool', m.sunflower, '340'),
    line('Cool', m.starch, '50'),
    line('Whip', m.orange, '10'),
  ],
  steps: [
    step('Melt', 'melt', 'Melt in a water bath', HELD),
    step('Melt', 'hold', 'Hold it warm', HELD),
    step('Cool', 'cool', 'Cool until lukewarm', { mostCelsius: '40' }),
    step('Cool', 'set', 'Cover and let it set'),
    step('Whip', 'whip', 'Whip until pale', { roundMinutes: '2', rounds: 1 }),
    step('Whip', 'cup', 'Weigh a full tin'),
  ],
});

const reportOf = (formulaId: string, m: Materials) => ({
  reference: 'R-2',
  assessor: 'A. N. Assessor',
  signedOn: inDays(-30),
  reviewBy: inDays(365),
  baseFormulaId: null,
  formulaIds: [formulaId],
  markets: ['GB', 'NI'],
  uses: ['leave-on'],
  ranges: [
    { materialId: m.shea, leastPercent: '50', mostPercent: '70' },
    { materialId: m.sunflower, leastPercent: '20', mostPercent: '45' },
    { materialId: m.starch, leastPercent: '0', mostPercent: '10' },
    { materialId: m.orange, leastPercent: '0', mostPercent: '1.5' },
  ],
});

const productOf = (formulaId: string, m: Materials) => ({
  name: 'Whole whipped butter',
  formulaId,
  declaredGrams: '35',
  tinId: m.tin,
  lidId: m.lid,
  labelId: m.label,
  aimGrams: null,
  fillBasis: 'minimum',
  bowlLossPercent: '3',
  retainedGrams: '10',
  markets: ['GB', 'NI'],
  functionText: 'Body butter',
  precautions: 'For outward use only. Keep away from eyes.',
  bestBeforeMonths: 12,
  openedMonths: 6,
  price: '9.50',
  faceMm: { shape: 'round', width: 60, height: 60 },
  backMm: { shape: 'round', width: 60, height: 60 },
  isWithdrawn: false,
});
