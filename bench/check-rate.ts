import { boundSafetyTables } from '../src/catalogue/safety-tables.ts';
import {
  type CompositionQuestion,
  checkComposition,
  type RangedContribution,
} from '../src/core/safety/index.ts';
import { essentialOils } from '../src/reference/index.ts';

const SCENT = [
  'lavender',
  'bergamot',
  'lemon',
  'lime-expressed',
  'rose-geranium',
  'ylang-complete',
  'patchouli',
  'cedarwood-virginian',
  'frankincense',
  'clary-sage',
  'sweet-orange',
  'vetiver',
];
const BASE = [
  'Butyrospermum Parkii Butter',
  'Theobroma Cacao Seed Butter',
  'Cocos Nucifera Oil',
  'Prunus Amygdalus Dulcis Oil',
  'Simmondsia Chinensis Seed Oil',
  'Cera Alba',
  'Tapioca Starch',
  'Tocopherol',
  'Helianthus Annuus Seed Oil',
  'Cetyl Alcohol',
  'Mangifera Indica Seed Butter',
  'Kaolin',
  'Mica',
];

/** Each oil at 0.13 % of the finished product, with every constituent of its table; the base fills up the rest. */
function contributionsOfButter(): RangedContribution[] {
  const oils = essentialOils.filter(({ id }) => SCENT.includes(id));
  const scent = oils.flatMap((oil): RangedContribution[] => {
    const share = 0.13 / 100;
    const own = {
      name: oil.inciEu,
      ...(oil.cas[0] !== undefined && { cas: oil.cas[0] }),
      plantPart: oil.plantPart,
      ...(oil.process !== undefined && { process: oil.process }),
      typicalPercent: 0.13,
      mostPercent: 0.13,
      confidence: 'read',
      fromMaterials: [oil.id],
    };
    const parts = oil.constituents.map(
      (row): RangedContribution => ({
        name: row.name,
        ...(row.cas !== undefined && { cas: row.cas }),
        origin: 'natural',
        typicalPercent: row.typicalPercent * share,
        mostPercent: (row.mostPercent ?? row.typicalPercent) * share,
        confidence: row.confidence,
        fromMaterials: [oil.id],
      }),
    );
    return [own, ...parts];
  });
  const base = BASE.map(
    (name): RangedContribution => ({
      name,
      typicalPercent: 7.5,
      mostPercent: 7.5,
      confidence: 'read',
      fromMaterials: [name],
    }),
  );
  return [...scent, ...base];
}

export const butterForCheck = (): CompositionQuestion => ({
  markets: ['EU', 'GB'],
  use: 'leave-on',
  category: '5A',
  firstSupplied: '2026-11-25',
  contributions: contributionsOfButter(),
});

/** Full checks a second: naming and limits for two markets of a butter with twelve essential oils. */
export function benchFullChecks(seconds = 1): { name: string; rate: number; unit: string } {
  const tables = boundSafetyTables();
  const question = butterForCheck();
  for (let warm = 0; warm < 200; warm++) checkComposition(tables, question);
  const until = performance.now() + seconds * 1000;
  const started = performance.now();
  let checks = 0;
  while (performance.now() < until) {
    for (let batch = 0; batch < 20; batch++) checkComposition(tables, question);
    checks += 20;
  }
  return {
    name: 'full check of a formula',
    rate: (checks * 1000) / (performance.now() - started),
    unit: 'checks/s',
  };
}
