import { describe, expect, it } from 'vitest';
import { lowWaterTables } from '../catalogue/index.ts';
import { assessLowWater, type LowWaterFacts } from '../core/safety/index.ts';
import { say } from '../words/index.ts';
import { sayLowWater } from './say-low-water.ts';

const DRY: LowWaterFacts = { hasWaterPhase: false };
const said = (facts: Partial<LowWaterFacts> = {}) => {
  const { sentence, cautions } = sayLowWater(assessLowWater({ ...DRY, ...facts }, lowWaterTables));
  return [sentence, ...cautions].map((each) => say(each));
};

describe('what a low-water assessment says', () => {
  it('has words for every criterion', () => {
    const facts: Partial<LowWaterFacts>[] = [
      { canWaterComeIn: false },
      { ph: 2 },
      { ph: 12 },
      { ethanolPercent: 60 },
      { fillingTemperatureCelsius: 75, canWaterComeIn: false, hasWaterPhase: true },
      { waterActivity: 0.5 },
      { isOrganicSolventBased: true },
      { isOxidising: true },
      { aluminiumChlorohydratePercent: 30 },
    ];
    const sentences = facts.map((each) => said(each)[0]);
    expect(new Set(sentences).size).toBe(facts.length);
    for (const sentence of sentences) {
      expect(sentence).toMatch(/^Low-risk for microbes as it is filled: .*ISO 29621/);
    }
  });

  it('says what is not known and what is not low-risk, with what to be careful of', () => {
    expect(said()[0]).toContain('nobody has said whether water can come in');
    expect(said({ canWaterComeIn: true })[0]).toContain('water comes in while it is used');
    expect(said({ hasWaterPhase: true })[0]).toContain('needs a preservative');
    const scrub = said({
      canWaterComeIn: true,
      dissolves: ['saturated-solution-sucrose'],
      antioxidants: [{ id: 'tocopherol', percent: '0.5' }],
      starchPercent: 10,
    });
    expect(scrub[0]).toContain('does not bind it enough');
    expect(scrub.join(' ')).toContain('An antioxidant is not a preservative');
    expect(scrub.join(' ')).toContain('about 1.3 % of the product, at most 1.6 %');
    expect(scrub.join(' ')).toContain('up to 0.2 %');
    expect(scrub.join(' ')).not.toContain('There are no words');
  });

  it('says figures with the digits that are known, each on its side of its bound', () => {
    const [, ...cautions] = said({
      canWaterComeIn: false,
      canWaterCondense: false,
      starchPercent: '19.912345',
      antioxidants: [{ id: 'tocopherol', percent: '0.2000000123' }],
    });
    const all = cautions.join(' ');
    // Typical 13 % and most 16 % of it are 2.58860485 % and 3.1859752 %.
    expect(all).toContain('about 2.6 % of the product, at most 3.2 %');
    expect(all).toContain('is 0.20000001 %; makers use it up to 0.2 %');
    const little = said({ starchPercent: '0.0123', canWaterComeIn: false }).join(' ');
    expect(little).toContain('about 0.0016 % of the product, at most 0.002 %');
  });
});
