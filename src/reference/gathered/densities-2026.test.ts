import { expect, it } from 'vitest';
import { expectSoundTable } from '../../../test/tables/expect-sound-table.ts';
import { densities, densitySources, densityTemperatureRules } from './densities-2026.ts';

it('has 15 densities, each a range of plausible figures', () => {
  expect(densities).toHaveLength(15);
  expectSoundTable(densities, densitySources);
  expectSoundTable(densityTemperatureRules, densitySources);
  for (const row of densities) {
    const low = row.minDensityGramsPerMl ?? row.minRelativeDensity ?? Number.NaN;
    const high = row.maxDensityGramsPerMl ?? row.maxRelativeDensity ?? Number.NaN;
    expect(low).toBeGreaterThan(0.85);
    expect(high).toBeLessThan(1.05);
    expect(low).toBeLessThanOrEqual(high);
  }
});
