import type { BenchHand } from './bench-hand.ts';
import { type Goods, idOf } from './stock-up.ts';

export interface Recipes {
  readonly base: string;
  readonly orange: string;
  readonly lavender: string;
  readonly balm: string;
}

type Line = readonly [stage: string, kind: 'material' | 'formula', id: string, grams: string];
type Step = readonly [
  stage: string,
  kind: 'melt' | 'hold' | 'cool' | 'mix' | 'cover' | 'set' | 'whip' | 'cup' | 'other',
  what: string,
  least: string | null,
  most: string | null,
  minutes: string | null,
  caution: string,
];

interface Recipe {
  readonly lines: readonly Line[];
  readonly steps: readonly Step[];
  readonly setting?: { least: number; most: number };
  readonly keepMonths?: number;
  /** Used on the hands besides. */
  readonly isForHands?: boolean;
}

const HOT = 'Hot fat burns. Stay with it, keep water away and a lid at hand.';

const HANDS = {
  use: 'leave-on',
  category: '5C',
  bodyPart: 'hand',
  productType: 'hand-cream',
} as const;

async function saveDetails(hand: BenchHand, formulaId: string, recipe: Recipe): Promise<string> {
  const revision = await hand.write(
    'saveRevision',
    {
      version: null,
      details: {
        use: 'leave-on',
        category: '5A',
        bodyPart: 'body',
        productType: 'body-lotion',
        alsoUsedAs: recipe.isForHands ? [HANDS] : [],
        minAgeMonths: null,
        standing: 'for-sale',
        note: '',
        settingHours: recipe.setting ?? null,
        keepMonths: recipe.keepMonths ?? null,
        lines: recipe.lines.map(([stage, itemKind, itemId, grams]) => ({ stage, itemKind, itemId, grams })),
        steps: recipe.steps.map(([stage, kind, what, leastCelsius, mostCelsius, minutes, caution]) => ({
          stage,
          kind,
          what,
          leastCelsius,
          mostCelsius,
          minutes,
          caution,
          ...(kind === 'whip' && { roundMinutes: '2', rounds: 3, growsPercent: '60' }),
        })),
      },
    },
    { id: formulaId },
  );
  return revision.id;
}

const formula = async (
  hand: BenchHand,
  name: string,
  code: string,
  kind: 'base' | 'mixture',
  recipe: Recipe,
): Promise<string> => {
  const { id } = await hand.write('saveFormula', { name, code, kind });
  await saveDetails(hand, id, recipe);
  return id;
};

/** One base for two scents, and a poured balm of its own. */
export async function writeRecipes(hand: BenchHand, goods: Goods): Promise<Recipes> {
  const material = (stage: string, key: string, grams: string): Line => [
    stage,
    'material',
    idOf(goods, key),
    grams,
  ];
  const base = await formula(hand, 'Plain whipping base', 'PB', 'base', {
    lines: [
      material('Melt', 'shea', '440'),
      material('Melt', 'kokum', '160'),
      material('Melt', 'coconut', '100'),
      material('Cool', 'sunflower', '250'),
      material('Cool', 'starch', '45'),
      material('Cool', 'tocopherol', '5'),
    ],
    steps: [
      ['Melt', 'melt', 'Melt the butters in a water bath', '70', '75', '20', HOT],
      ['Cool', 'cool', 'Let it cool, stirring', '35', '40', '30', ''],
      ['Cool', 'mix', 'Stir starch into the oil, then into the butters', null, null, '5', ''],
      [
        'Cool',
        'cover',
        'Pour into the tub and cover',
        null,
        null,
        null,
        'Cover before it is cold: condensation is water in a product without a preservative.',
      ],
    ],
    setting: { least: 14, most: 26 },
    keepMonths: 6,
  });
  const whip: Step[] = [
    ['Whip', 'whip', 'Whip in three rounds of two minutes, looking after each', null, null, '6', ''],
    ['Whip', 'cup', 'Cup test: weigh a full cup', null, null, null, ''],
  ];
  const orange = await formula(hand, 'Orange and cedar butter', 'OC', 'mixture', {
    lines: [
      ['Whip', 'formula', base, '985'],
      material('Whip', 'orange', '9'),
      material('Whip', 'cedar', '6'),
    ],
    steps: whip,
  });
  const lavender = await formula(hand, 'Lavender butter', 'LB', 'mixture', {
    lines: [['Whip', 'formula', base, '991'], material('Whip', 'lavender', '9')],
    steps: whip,
    isForHands: true,
  });
  const balm = await formula(hand, 'Peppermint foot balm', 'FB', 'mixture', {
    lines: [
      material('Melt', 'beeswax', '180'),
      material('Melt', 'cocoa', '280'),
      material('Melt', 'sunflower', '526'),
      material('Scent', 'peppermint', '10'),
      material('Scent', 'tocopherol', '4'),
    ],
    steps: [
      ['Melt', 'melt', 'Melt wax, butter and oil in a water bath', '68', '74', '25', HOT],
      ['Scent', 'cool', 'Cool before the scent goes in', '48', '52', '15', ''],
      ['Scent', 'mix', 'Stir the scent in', null, null, '2', 'Keep peppermint oil away from eyes.'],
    ],
  });
  return { base, orange, lavender, balm };
}

/** What the assessor wrote: one report for the base with both scents, one for the balm. */
export async function enterReports(hand: BenchHand, goods: Goods, recipes: Recipes): Promise<void> {
  const range = (key: string, leastPercent: string, mostPercent: string) => ({
    materialId: idOf(goods, key),
    leastPercent,
    mostPercent,
  });
  const common = {
    assessor: 'Dr M. Vellacott',
    signedOn: hand.dateIn(-45),
    reviewBy: hand.dateIn(500),
    markets: ['GB' as const, 'NI' as const],
    uses: ['leave-on' as const],
  };
  await hand.write('saveReport', {
    details: {
      ...common,
      reference: 'MV-214 whipped butters',
      baseFormulaId: recipes.base,
      formulaIds: [recipes.orange, recipes.lavender],
      ranges: [
        range('shea', '38', '50'),
        range('kokum', '10', '20'),
        range('coconut', '5', '15'),
        range('sunflower', '20', '30'),
        range('starch', '2', '8'),
        range('tocopherol', '0.1', '1'),
        range('orange', '0', '1'),
        range('cedar', '0', '0.8'),
        range('lavender', '0', '1'),
      ],
    },
  });
  await hand.write('saveReport', {
    details: {
      ...common,
      reference: 'MV-219 foot balm',
      baseFormulaId: null,
      formulaIds: [recipes.balm],
      ranges: [
        range('beeswax', '12', '24'),
        range('cocoa', '20', '35'),
        range('sunflower', '45', '60'),
        range('peppermint', '0', '1.2'),
        range('tocopherol', '0.1', '1'),
      ],
    },
  });
}

/** What no table tells: decided once for the revision, by name, with a reason. */
export async function decideUnknowns(hand: BenchHand, recipes: Recipes): Promise<void> {
  for (const formulaId of [recipes.base, recipes.orange, recipes.lavender, recipes.balm]) {
    const { latest } = await hand.read('getFormula', { params: { id: formulaId } });
    if (!latest) throw new Error('the recipe was written');
    const check = await hand.read('checkRevision', {
      params: { id: latest.id },
      query: { markets: 'GB,NI' },
    });
    for (const question of check.open.filter((one) => one.decided === null)) {
      await hand.write(
        'decideUnknown',
        {
          key: question.key,
          verdict: 'accepted',
          reason: 'Covered by the assessor in the report, read on the day of signing.',
        },
        { id: latest.id },
      );
    }
  }
}
