import { describe, expect, it } from 'vitest';
import { exact } from '../../../core/quantity/index.ts';
import { type AirTin, expectDensity, loadsOf, meanDensityOf, readAir, worstVerdict } from './read-air.ts';

const tin: AirTin = {
  ...{ productId: 'p', productName: 'Orange butter', brimMl: '60', declaredGrams: '35', aimGrams: '36' },
  ...{ tareGrams: '12', headspacePercent: '0', lossPercent: '3', planned: null, spread: null },
};
const spread = { runs: 2, tins: 22, degreesOfFreedom: 20, standardDeviationGrams: 0.4 };
const ask = (densities: readonly string[], of: Partial<AirTin> = {}, bowlGrams = '1000') => {
  const [found] = readAir({
    tins: [{ ...tin, ...of }],
    gramsPerMl: densities.map((each) => exact(each)),
    before: null,
    unwhipped: null,
    bowlGrams: exact(bowlGrams),
  });
  if (!found) throw new Error('there is a tin');
  return found;
};

describe('what a cup says of each tin', () => {
  it('tells how many tins the bowl fills, less what stays behind', () => {
    // 1000 g less 3 % is 970 g: 26 tins of 36 g, and 34 g over.
    expect(ask(['0.65']).fills?.count).toBe(26);
    expect(ask(['0.65']).fills?.leftGrams.toFixed()).toBe('34');
    expect(ask(['0.65'], {}, '0').fills).toBeNull();
  });

  it('tells more tins where they do not take their aim', () => {
    // 60 ml at 0.59 g/ml take 35.4 g, and the aim is 36 g: 970 g are 27 tins of 35.4 g, and not 26 of 36 g.
    expect(ask(['0.59']).verdict.isShortOfAim).toBe(true);
    expect(ask(['0.59']).fills?.count).toBe(27);
  });

  it('knows the density before by all cups of that look, not the first of them', () => {
    const cup = (grossGrams: string) => ({
      grossGrams,
      tareGrams: '45',
      cupMl: '200',
      unwhippedGrams: null,
      tinOf: '',
    });
    expect(meanDensityOf([cup('155'), cup('165'), cup('175')])?.toFixed()).toBe('0.6');
    expect(meanDensityOf([])).toBeNull();
  });

  it('does not know a chance without a spread', () => {
    expect(ask(['0.65']).chance).toBe('no-data');
    expect(ask(['0.65', '0.65']).chance).toBe('no-spread');
  });

  it('takes the spread of earlier runs, and that of this bowl with it', () => {
    const runs = ask(['0.65'], { spread }).chance;
    expect(runs).toMatchObject({ from: 'runs', degreesOfFreedom: 20, meanOf: 1, tins: 26 });
    const both = ask(['0.65', '0.66'], { spread }).chance;
    expect(both).toMatchObject({ from: 'both', degreesOfFreedom: 21, meanOf: 2 });
    expect(ask(['0.65', '0.66']).chance).toMatchObject({ from: 'now', degreesOfFreedom: 1 });
  });

  it('is lower the more tins have to reach the label, and almost nothing where they hold too little', () => {
    const chance = (planned: number, densities: readonly string[] = ['0.65', '0.651', '0.649']) => {
      const found = ask(densities, { spread, planned }).chance;
      return typeof found === 'string' ? Number.NaN : found.all;
    };
    expect(chance(1)).toBeGreaterThan(chance(12));
    expect(chance(12)).toBeGreaterThan(0);
    expect(chance(12, ['0.55', '0.551', '0.549'])).toBeLessThan(0.001);
    expect(chance(0)).toBe(1);
  });

  it('lets the tin that asks for the most care speak for the bowl', () => {
    const small = { ...tin, productId: 'q', brimMl: '30', declaredGrams: '20', aimGrams: '20.5' };
    const found = readAir({
      tins: [tin, small],
      gramsPerMl: [exact('0.65')],
      before: null,
      unwhipped: null,
      bowlGrams: exact('1000'),
    });
    expect(found.map(({ verdict }) => verdict.verdict)).toEqual(['more', 'too-much']);
    expect(worstVerdict(found)).toBe('too-much');
    expect(worstVerdict([])).toBeUndefined();
  });
});

describe('what it is expected to whip to', () => {
  const air = {
    ...{ bowlGrams: '1000', bowlHoldsGrams: '', bowlHoldsMl: '1500', scaleStepGrams: '0.1' },
    earlier: null,
    unwhippedGramsPerMl: null,
  };

  it('is the lightest of earlier batches, before what the method says', () => {
    const earlier = { batches: 2, meanGramsPerMl: '0.6', leastGramsPerMl: '0.5' };
    expect(expectDensity({ ...air, earlier }, '80')?.gramsPerMl.toFixed()).toBe('0.5');
    expect(expectDensity(air, '82')?.gramsPerMl.toFixed()).toBe('0.5');
    expect(expectDensity(air, '82')).toMatchObject({ by: 'expected', isWeighed: false });
    expect(expectDensity(air, null)).toBeNull();
  });

  it('splits the bowl by it', () => {
    const expected = expectDensity(air, '82');
    const loads = expected && loadsOf(air, exact('1000'), expected);
    expect(loads?.ok && loads.value.loads.map((load) => load.toFixed())).toEqual(['500', '500']);
  });
});
