import { describe, expect, it } from 'vitest';
import { lowWaterTables } from '../../catalogue/low-water-tables.ts';
import { assessLowWater } from './assess-low-water.ts';
import { type FormulaShare, readLowWaterFacts } from './read-low-water-facts.ts';

const share = (name: string, inciEu: string, percent: string): FormulaShare => ({ name, inciEu, percent });
const BUTTER = [
  share('Shea butter', 'Butyrospermum Parkii Butter', '80'),
  share('Arrowroot', 'Maranta Arundinacea Root Powder', '9.9'),
  share('Rice starch', 'Oryza Sativa Starch', '10'),
  share('Vitamin E', 'Tocopherol', '0.1'),
];
const SCRUB = [
  share('Sunflower oil', 'Helianthus Annuus Seed Oil', '40'),
  share('White sugar', 'Sucrose', '60'),
];

describe('what a formula tells of water', () => {
  it('finds no water in a butter, its starch together, its antioxidant', () => {
    const facts = readLowWaterFacts(BUTTER, 'leave-on');
    expect(facts.hasWaterPhase).toBe(false);
    expect(facts.canWaterComeIn).toBeUndefined();
    expect(facts.starchPercent?.toString()).toBe('19.9');
    expect(facts.antioxidants?.map(({ id, percent }) => [id, percent.toString()])).toEqual([
      ['tocopherol', '0.1'],
    ]);
    expect(assessLowWater(facts, lowWaterTables).lowRisk).toBe('unknown');
    expect(assessLowWater({ ...facts, canWaterComeIn: false }, lowWaterTables).lowRisk).toBe('yes');
  });

  it('takes a scrub to be used in the shower, where its sugar dissolves', () => {
    const facts = readLowWaterFacts(SCRUB, 'rinse-off');
    expect(facts).toMatchObject({ canWaterComeIn: true, dissolves: ['saturated-solution-sucrose'] });
    expect(assessLowWater(facts, lowWaterTables)).toMatchObject({
      lowRisk: 'no',
      reason: 'solution-too-wet',
    });
  });

  it('finds the water of a hydrosol', () => {
    const facts = readLowWaterFacts(
      [...BUTTER, share('Rose water', 'Rosa Damascena Flower Water', '5')],
      'leave-on',
    );
    expect(assessLowWater(facts, lowWaterTables)).toMatchObject({ lowRisk: 'no', reason: 'water-phase' });
  });

  it('does not take a material without a label name for dry', () => {
    const facts = readLowWaterFacts([...BUTTER, share('Magic base', '', '5')], 'leave-on');
    expect(facts.hasWaterPhase).toBeUndefined();
    expect(assessLowWater({ ...facts, canWaterComeIn: false }, lowWaterTables)).toMatchObject({
      lowRisk: 'unknown',
      reason: 'water-phase-not-told',
    });
  });

  it('names only rows that the tables have', () => {
    const all = [
      share('Sea salt', 'Maris Sal', '1'),
      share('Epsom salt', 'Magnesium Sulfate', '1'),
      share('Dead Sea salt', 'Magnesium Chloride', '1'),
      share('Sylvite', 'Potassium Chloride', '1'),
      share('Rosemary extract', 'Rosmarinus Officinalis Leaf Extract', '1'),
      ...SCRUB,
    ];
    const { dissolves = [], antioxidants = [] } = readLowWaterFacts(all, 'rinse-off');
    expect(dissolves).toHaveLength(5);
    const known = new Set([...lowWaterTables.solutions, ...lowWaterTables.antioxidants].map(({ id }) => id));
    for (const id of [...dissolves, ...antioxidants.map((one) => one.id)]) expect(known).toContain(id);
  });
});
