import { describe, expect, it } from 'vitest';
import { lowWaterTables } from '../../catalogue/low-water-tables.ts';
import { lowWaterProductClasses } from '../../reference/index.ts';
import { assessLowWater } from './assess-low-water.ts';
import { findWaterMaterials } from './find-water-materials.ts';
import type { LowWaterFacts } from './low-water.ts';

const assess = (facts: Partial<LowWaterFacts> = {}) =>
  assessLowWater({ hasWaterPhase: false, ...facts }, lowWaterTables);
const risk = (facts: Partial<LowWaterFacts> = {}) => {
  const { lowRisk, criterion } = assess(facts);
  return [lowRisk, criterion?.id ?? null];
};

describe('whether a product is microbiologically low-risk', () => {
  it('is for a butter without water that is used dry', () => {
    expect(risk({ canWaterComeIn: false })).toEqual(['yes', 'anhydrous']);
    expect(assess({ canWaterComeIn: false }).criterion).toMatchObject({
      source: 'laboratory-faq',
      confidence: 'read',
    });
  });

  it('is unknown where nobody says whether water comes in, and where it does', () => {
    expect(assess()).toMatchObject({ lowRisk: 'unknown', reason: 'water-in-use-not-told', criterion: null });
    expect(assess({ canWaterComeIn: true })).toMatchObject({ lowRisk: 'unknown', reason: 'water-comes-in' });
  });

  it('is not with a water phase, whatever nobody told', () => {
    expect(assess({ hasWaterPhase: true })).toMatchObject({ lowRisk: 'no', reason: 'water-phase' });
    expect(assess({ hasWaterPhase: true }).open).toContain('water-activity');
  });

  it.each([
    ['ph', 2.99, 3, 'ph-low'],
    ['ph', 10.01, 10, 'ph-high'],
    ['ethanolPercent', 20.01, 20, 'alcohol'],
    ['fillingTemperatureCelsius', 65.01, 65, 'fill-temperature'],
    ['waterActivity', 0.7499, 0.75, 'water-activity'],
    ['aluminiumChlorohydratePercent', 25.01, 25, 'aluminium'],
  ] as const)('goes by %s: %d is beyond the figure, %d is not and is told', (quantity, beyond, at, id) => {
    const wet = { hasWaterPhase: true, canWaterComeIn: false };
    expect(risk({ ...wet, [quantity]: beyond })).toEqual(['yes', id]);
    expect(risk({ ...wet, [quantity]: at })).toEqual(['no', null]);
    const judged = assess({ hasWaterPhase: true, [quantity]: at }).criteria.find((each) => each.id === id);
    expect(judged).toMatchObject({ verdict: 'not-met', isAtFigure: true });
  });

  it('does not take a hot filling for an answer where water comes in later', () => {
    const hot = { fillingTemperatureCelsius: 80 };
    expect(risk({ ...hot, canWaterComeIn: true })).toEqual(['unknown', null]);
    expect(assess(hot)).toMatchObject({ lowRisk: 'unknown', reason: 'water-in-use-not-told' });
    expect(assess({ ...hot, hasWaterPhase: true })).toMatchObject({
      lowRisk: 'unknown',
      reason: 'water-in-use-not-told',
    });
    expect(risk({ ...hot, canWaterComeIn: false, hasWaterPhase: true })).toEqual(['yes', 'fill-temperature']);
  });

  it('does not take a water activity, measured dry, for an answer where water is known to come in later', () => {
    const dry = { waterActivity: 0.5 };
    expect(risk(dry)).toEqual(['yes', 'water-activity']);
    expect(risk({ ...dry, canWaterComeIn: true })).toEqual(['unknown', null]);
    const sugar = { canWaterComeIn: true, dissolves: ['saturated-solution-sucrose'] };
    expect(risk({ ...dry, ...sugar })).toEqual(['no', null]);
  });

  it('is unknown where nobody knows whether water is in one of its materials', () => {
    const { hasWaterPhase: _, ...facts } = { hasWaterPhase: false, canWaterComeIn: false };
    expect(assessLowWater(facts, lowWaterTables)).toMatchObject({
      lowRisk: 'unknown',
      reason: 'water-phase-not-told',
    });
    expect(assessLowWater({ ...facts, ph: 2 }, lowWaterTables).lowRisk).toBe('yes');
  });

  it('tells a scrub in the shower by what dissolves: sugar is too wet, salt too close to say', () => {
    const scrub = (id: string) => assess({ canWaterComeIn: true, dissolves: [`saturated-solution-${id}`] });
    expect(scrub('sucrose')).toMatchObject({ lowRisk: 'no', reason: 'solution-too-wet' });
    expect(scrub('magnesium-sulfate-heptahydrate').lowRisk).toBe('no');
    expect(scrub('sodium-chloride')).toMatchObject({ lowRisk: 'unknown', reason: 'water-comes-in' });
    expect(scrub('magnesium-chloride').lowRisk).toBe('unknown');
  });

  it('agrees with the reading of the tables for what workshops make', () => {
    const read = (id: string) => lowWaterProductClasses.find((row) => row.id === id)?.lowRisk;
    const FACTS: Readonly<Record<string, Partial<LowWaterFacts>>> = {
      'whipped-body-butter': { canWaterComeIn: false },
      'balm-lip-balm-body-oil': { canWaterComeIn: false },
      'salt-scrub-in-oil-used-with-dry-hands': {
        canWaterComeIn: false,
        dissolves: ['saturated-solution-sodium-chloride'],
      },
      'salt-scrub-in-oil-jar-opened-in-the-shower': {
        canWaterComeIn: true,
        dissolves: ['saturated-solution-sodium-chloride'],
      },
      'sugar-scrub-in-oil-jar-opened-in-the-shower': {
        canWaterComeIn: true,
        dissolves: ['saturated-solution-sucrose'],
      },
      'cold-process-soap-bar': { hasWaterPhase: true, ph: 10.2 },
      'lotion-cream-aloe-or-hydrosol-added': { hasWaterPhase: true },
      'butter-with-honey-glycerin-infusion-fresh-plant-or-milk': { hasWaterPhase: true },
    };
    for (const [id, facts] of Object.entries(FACTS)) {
      const expected = read(id) === 'doubtful' ? 'unknown' : read(id);
      expect([id, assess(facts).lowRisk]).toEqual([id, expected]);
    }
  });
});

describe('what to be careful of', () => {
  it('warns of water that comes in and of water that condenses, unless somebody says that it cannot', () => {
    expect(assess().cautions).toEqual(['low-water-may-come-in', 'low-water-condenses']);
    expect(assess({ canWaterComeIn: true }).cautions).toContain('low-water-comes-in');
    const dry = { canWaterComeIn: false, canWaterCondense: false };
    expect(assess(dry).cautions).toEqual(['low-water-write-down']);
    expect(assess({ hasWaterPhase: true }).cautions).toEqual([]);
  });

  it('says that an antioxidant is no preservative, and holds it against the usual levels', () => {
    const tocopherol = (percent: string) => assess({ antioxidants: [{ id: 'tocopherol', percent }] });
    expect(tocopherol('0.1').cautions).toContain('low-water-antioxidant');
    const verdicts = ['0.0199', '0.02', '0.2', '0.2001'].map(
      (percent) => tocopherol(percent).antioxidants[0]?.verdict,
    );
    expect(verdicts).toEqual(['below', 'usual', 'usual', 'above']);
  });

  it('counts the water that starch binds', () => {
    expect(assess({ starchPercent: 10 }).boundWaterPercent).toEqual({ typical: 1.3, most: 1.6 });
    expect(assess({ starchPercent: 0 })).toMatchObject({ boundWaterPercent: null });
  });
});

describe('materials that bring water in', () => {
  const found = (name: string, inciEu: string) => findWaterMaterials([{ name, inciEu }]).length === 1;

  it('are told by label name or common name', () => {
    expect(found('Tap water', 'Aqua')).toBe(true);
    expect(found('Lavender hydrosol', 'Lavandula Angustifolia Flower Water')).toBe(true);
    expect(found('Aloe', 'Aloe Barbadensis Leaf Juice')).toBe(true);
    expect(found('Honey', 'Mel')).toBe(true);
    expect(found('Goat milk', 'Caprae Lac')).toBe(true);
    expect(found('Glycerine', 'Glycerin')).toBe(true);
  });

  it('are told by one ingredient of several, and not hidden by the fat beside it', () => {
    expect(found('Body base', 'Aqua, Glycerin, Helianthus Annuus Seed Oil, Cetearyl Alcohol')).toBe(true);
    expect(found('Body base', 'Water (and) Cetearyl Alcohol')).toBe(true);
    expect(found('Base', 'Aloe Barbadensis Leaf Juice, Butyrospermum Parkii Butter')).toBe(true);
    expect(found('Balm base', 'Helianthus Annuus Seed Oil, Cera Alba')).toBe(false);
  });

  it.each(['Cream base', 'Aloe and shea butter gel', 'Rose hydrolate', 'Buttermilk', 'Fresh avocado butter'])(
    'are told by what they are called: %s',
    (name) => expect(found(name, '')).toBe(true),
  );

  it('are told by the distillate of a plant', () => {
    expect(found('Rose', 'Rosa Damascena Flower Distillate')).toBe(true);
  });

  it('are not fats, waxes, oils, powders', () => {
    expect(found('Shea butter', 'Butyrospermum Parkii Butter')).toBe(false);
    expect(found('Beeswax', 'Cera Alba')).toBe(false);
    expect(found('Calendula infused oil', 'Helianthus Annuus Seed Oil')).toBe(false);
    expect(found('Arrowroot', 'Maranta Arundinacea Root Powder')).toBe(false);
    expect(found('Coconut milk powder', 'Cocos Nucifera Fruit Powder')).toBe(false);
    expect(found('Aloe butter', 'Cocos Nucifera Oil, Aloe Barbadensis Leaf Extract')).toBe(true);
    expect(found('Tea tree oil', 'Melaleuca Alternifolia Leaf Oil')).toBe(false);
    expect(found('Buttermilk powder', 'Lac Powder')).toBe(false);
  });
});
