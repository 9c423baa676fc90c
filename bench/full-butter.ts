import type { FormulaLine, FormulaLookup, FormulaRecipe, RollUpMaterial } from '../src/core/formula/index.ts';
import type { SafetyReport } from '../src/core/safety/index.ts';
import { type EssentialOil, essentialOils, type OilConstituent } from '../src/reference/index.ts';

/** An invented butter of 25 lines: a base that holds a base itself, twelve essential oils, twelve more materials. */

export const SCENT = [
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
export const WHIPPED = [
  'Cocos Nucifera Oil',
  'Prunus Amygdalus Dulcis Oil',
  'Simmondsia Chinensis Seed Oil',
  'Cera Alba',
  'Tapioca Starch',
  'Tocopherol',
  'Helianthus Annuus Seed Oil',
  'Cetyl Alcohol',
  'Kaolin',
  'Mica',
  'Vitis Vinifera Seed Oil',
  'Zea Mays Starch',
];
export const MELTED = [
  'Butyrospermum Parkii Butter',
  'Theobroma Cacao Seed Butter',
  'Mangifera Indica Seed Butter',
];

const line = (item: FormulaLine['item'], grams: string): FormulaLine => ({
  key: JSON.stringify(item),
  stage: 'Melt',
  item,
  grams,
});
const material = (id: string, grams: string): FormulaLine => line({ kind: 'material', id }, grams);
const base = (formulaId: string, grams: string): FormulaLine => line({ kind: 'base', formulaId }, grams);
const recipe = (formulaId: string, lines: readonly FormulaLine[]): FormulaRecipe => ({
  formulaId,
  name: formulaId,
  lines,
});

const melted = recipe(
  'melted',
  MELTED.map((id, index) => material(id, `${310 + index * 7}`)),
);
const quiet = recipe('quiet', [base('melted', '610.5'), material('Olea Europaea Fruit Oil', '131.25')]);
const butter = recipe('butter', [
  base('quiet', '742.35'),
  ...SCENT.map((id, index) => material(id, (1.1 + index / 10).toFixed(2))),
  ...WHIPPED.map((id, index) => material(id, `${18.4 + index}`)),
]);

export const butterLookup: FormulaLookup = {
  revision: () => butter,
  base: (formulaId) => [melted, quiet].find((known) => known.formulaId === formulaId),
};

/** As a new material is filled from the tables: every constituent, with the range that covers all known figures. */
export function rangeOf({
  name,
  cas,
  leastPercent,
  typicalPercent,
  mostPercent,
  confidence,
}: OilConstituent) {
  return {
    name,
    cas: cas ?? null,
    leastPercent: String(leastPercent ?? typicalPercent),
    typicalPercent: String(typicalPercent),
    mostPercent: String(mostPercent ?? typicalPercent),
    confidence,
  };
}

const oilMaterial = (oil: EssentialOil): RollUpMaterial => ({
  id: oil.id,
  name: oil.inciEu,
  cas: oil.cas[0] ?? null,
  plantPart: oil.plantPart,
  process: oil.process ?? null,
  constituents: oil.constituents.map(rangeOf),
});

export const butterMaterials: ReadonlyMap<string, RollUpMaterial> = new Map([
  ...[...MELTED, ...WHIPPED, 'Olea Europaea Fruit Oil'].map(
    (name) => [name, { id: name, name, constituents: [] }] as const,
  ),
  ...essentialOils.filter(({ id }) => SCENT.includes(id)).map((oil) => [oil.id, oilMaterial(oil)] as const),
]);

/** The assessor's report names every material: oils up to 1 %, the others up to 60 %. */
export const butterReport: SafetyReport = {
  reference: 'R-1',
  reviewBy: '2027-10-01',
  baseIds: ['quiet'],
  scentIds: ['butter'],
  materials: [...butterMaterials.values()].map(({ id, name }) => ({
    materialId: id,
    name,
    leastPercent: '0',
    mostPercent: SCENT.includes(id) ? '1' : '60',
  })),
};
