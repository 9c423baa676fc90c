import { buildOwnWorkshop } from './own-workshop.ts';
import { inDays, stampBy } from './stamp.ts';
import type { RunningServer } from './start-server.ts';

/** Grams of each of the three things that the batch is weighed from, in order. */
const LINES = [
  ['shea', '600'],
  ['sunflower', '350'],
  ['starch', '50'],
] as const;

export interface AwayShop {
  readonly person: string;
  /** A second pair of hands. */
  readonly other: string;
  /** Starts a trial of 1 kg that is weighed from three things and covered in the end. */
  startBatch(): Promise<string>;
}

/** A workshop with goods enough for many batches of a mixture that is weighed from three things. Invented. */
export async function buildAwayShop(server: RunningServer): Promise<AwayShop> {
  const shop = await buildOwnWorkshop(server);
  const stamp = () => stampBy(shop.person);
  const bought = { bestBefore: inDays(300), quantity: '900000', paid: '10', accept: true };
  for (const [part] of LINES) {
    const lot = { ...bought, stamp: stamp(), materialId: shop.materials[part], supplierLot: `S-${part}` };
    await server.call('receiveGoods', { body: lot });
  }
  const named = { stamp: stamp(), name: 'Three things', code: 'TT', kind: 'mixture' };
  const formula = await server.call('saveFormula', { body: named });
  const revision = await server.call('saveRevision', {
    params: { id: formula.id },
    body: { stamp: stamp(), version: null, details: detailsOf(shop.materials) },
  });
  const wish = {
    revisionId: revision.id,
    purpose: 'trial',
    markets: ['GB'],
    size: { by: 'grams', grams: '1000' },
  };
  const other = await server.call('savePerson', { body: { stamp: stamp(), name: 'Bo Marsh' } });
  return {
    person: shop.person,
    other: other.id,
    startBatch: async () => (await server.call('startBatch', { body: { stamp: stamp(), wish } })).id,
  };
}

const detailsOf = (materials: Readonly<Record<'shea' | 'sunflower' | 'starch', string>>) => ({
  use: 'leave-on',
  category: '5A',
  bodyPart: 'body',
  productType: 'body-lotion',
  minAgeMonths: null,
  standing: 'trial',
  note: '',
  settingHours: null,
  keepMonths: null,
  lines: LINES.map(([part, grams]) => ({
    stage: 'Mix',
    itemKind: 'material',
    itemId: materials[part],
    grams,
  })),
  steps: [
    {
      stage: 'Mix',
      kind: 'other',
      what: 'Wipe the bench',
      leastCelsius: null,
      mostCelsius: null,
      minutes: null,
      caution: '',
    },
  ],
});
