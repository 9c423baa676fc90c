import { describe, expect, it } from 'vitest';
import { readTinsAir } from './read-tins-air.ts';
import type { Run } from './run.ts';

const AIR = { brimMl: '60', headspacePercent: '0', lossPercent: '0', spread: null, cups: [] };
const cup = (grossGrams: string) => ({
  ...{ grossGrams, tareGrams: '45', cupMl: '200', unwhippedGrams: null, tinOf: '' },
});

function runOf(nets: readonly string[], more: object = {}): Run {
  const weights = nets.map((netGrams, index) => ({
    entryId: `tin-${index + 1}`,
    number: index + 1,
    netGrams,
    verdict: Number(netGrams) < 35.1 ? 'too-light' : 'inside',
    isStruck: false,
    fate: null,
    refillOf: null,
    isRefilled: false,
  }));
  return {
    ...{ declaredGrams: '35', aimGrams: '36', fillBasis: 'minimum', errorGrams: '0.1', weights, air: AIR },
    ...{ bulkOnHandGrams: '1000', bowlLeftGrams: '400', plannedSampleGrams: null },
    summary: { stillToFill: 10 },
    ...more,
  } as unknown as Run;
}
const NOTHING = { full: [], room: [] };
const read = (run: Run, said = NOTHING as Parameters<typeof readTinsAir>[1]) => {
  const found = readTinsAir(run, said);
  if (!found) throw new Error('it says something');
  return found;
};

describe('what the first tins of a whipped product say of its air', () => {
  it('speaks from the third tin on: how many the bowl still fills at this weight', () => {
    expect(readTinsAir(runOf(['36', '36.2']), NOTHING)).toBeNull();
    // 400 g less nothing: 11 tins of 36.1 g are 397.1 g.
    const three = read(runOf(['36', '36.1', '36.2']));
    expect(three.meanGrams.toFixed()).toBe('36.1');
    expect(three.fills.count).toBe(11);
    expect(three.fills.leftGrams.toFixed()).toBe('2.9');
  });

  it('takes off the sample and what stays behind of the whole bowl', () => {
    // 400 - 20 - 2 % of 1000 = 360 g: 9 tins of 36.1 g, not 11.
    const run = runOf(['36', '36.1', '36.2'], {
      plannedSampleGrams: '20',
      air: { ...AIR, lossPercent: '2' },
    });
    expect(read(run).fills.count).toBe(9);
  });

  it('judges by the cups of the bowl where no tin was said to be full', () => {
    // 110 g in 200 ml: 60 ml take 33 g, and the label states 35 g.
    const light = read(runOf(['36', '36.1', '36.2'], { air: { ...AIR, cups: [cup('155')] } }));
    expect(light).toMatchObject({ by: 'cups', ask: null, verdict: { verdict: 'too-much' } });
    expect(light.verdict?.takesGrams.toFixed()).toBe('33');
  });

  it('tells of too much air at once where a tin is full and below its label', () => {
    const asked = read(runOf(['33.2']));
    expect(asked.verdict).toBeNull();
    expect(asked.ask?.entryId).toBe('tin-1');
    const told = read(runOf(['33.2']), { full: ['tin-1'], room: [] });
    expect(told).toMatchObject({ by: 'tins', ask: null, verdict: { verdict: 'too-much' } });
    expect(told.verdict?.takesGrams.toFixed(2)).toBe('33.20');
  });

  it('counts a full tin up to the room under its lid', () => {
    // 36 g to the brim less 10 %: the same tin, and the same verdict as 36 g of 54 ml.
    const air = { ...AIR, headspacePercent: '10' };
    const told = read(runOf(['36', '36', '36'], { air }), { full: ['tin-3'], room: [] });
    expect(told.verdict?.takesGrams.toFixed(2)).toBe('36.00');
    expect(told.verdict?.meanGramsPerMl.toFixed(3)).toBe('0.667');
    expect(told.verdict?.verdict).toBe('stop');
  });

  it('asks no more once somebody said that there is room, but for a later tin below its label', () => {
    const said = { full: [], room: ['tin-3'] };
    expect(read(runOf(['36', '36', '36', '36']), said).ask).toBeNull();
    expect(read(runOf(['36', '36', '36', '34']), said).ask?.entryId).toBe('tin-4');
  });

  it('knows the chance for the tins that are still to fill, by their spread', () => {
    // s = 0.1 g, mean 36.1 g, least 35.1 g with the error of the scale: ten standard deviations, two degrees of freedom.
    const { chance } = read(runOf(['36', '36.1', '36.2']));
    if (chance === null || typeof chance === 'string') throw new Error('it is known');
    expect(chance).toMatchObject({ tins: 10, from: 'now', degreesOfFreedom: 2 });
    expect(chance.leastGrams.toFixed()).toBe('35.1');
    expect(chance.standardDeviationGrams).toBeCloseTo(0.1, 10);
    // Student's t of 10 / sqrt(1 + 1/3) = 8.66 with two degrees of freedom leaves 0.65 % for one tin: for ten more, but not ten times.
    expect(chance.all).toBeGreaterThan(0.935);
    expect(chance.all).toBeLessThan(0.9935);
  });

  it('pools with earlier runs, and is honest where nothing differs or nothing is left to fill', () => {
    const spread = { runs: 2, tins: 22, degreesOfFreedom: 20, standardDeviationGrams: 0.4 };
    const both = read(runOf(['36', '36.1', '36.2'], { air: { ...AIR, spread } })).chance;
    // (2 x 0.01 + 20 x 0.16) / 22 = 0.14636..., its root 0.38257.
    expect(both).toMatchObject({ from: 'both', degreesOfFreedom: 22 });
    expect((both as { standardDeviationGrams: number }).standardDeviationGrams).toBeCloseTo(0.38257, 4);
    expect(read(runOf(['36', '36', '36'])).chance).toBe('no-spread');
    expect(read(runOf(['33']), { full: ['tin-1'], room: [] }).chance).toBe('no-data');
    expect(read(runOf(['36', '36.1', '36.2'], { summary: { stillToFill: 0 } })).chance).toBeNull();
  });

  it('learns the spread from tins as they were filled first, not from what was filled up', () => {
    const run = runOf(['34.2', '36', '36.2', '36']);
    const [light, ...rest] = run.weights;
    const again = { ...run.weights[3], refillOf: 'tin-1', netGrams: '36' };
    const weights = [{ ...light, isRefilled: true }, ...rest.slice(0, 2), again];
    const { chance } = read({ ...run, weights } as unknown as Run);
    // 34.2, 36, 36.2: mean 35.4667 g, s = 1.10151 g.
    expect((chance as { standardDeviationGrams: number }).standardDeviationGrams).toBeCloseTo(1.10151, 4);
  });

  it('says nothing of what was not whipped', () => {
    expect(readTinsAir(runOf(['36', '36', '36'], { air: null }), NOTHING)).toBeNull();
  });
});
