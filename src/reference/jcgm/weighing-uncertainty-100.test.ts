import { expect, it } from 'vitest';
import { expectSoundTable } from '../../../test/tables/expect-sound-table.ts';
import { weighingUncertaintyRules, weighingUncertaintySources } from './weighing-uncertainty-100.ts';

it('has five rules; a reading adds d / sqrt(12), two readings d / sqrt(6)', () => {
  expect(weighingUncertaintyRules).toHaveLength(5);
  expectSoundTable(weighingUncertaintyRules, weighingUncertaintySources);
  const share = (id: string): number =>
    weighingUncertaintyRules.find((row) => row.id === id)?.uncertaintyInReadability ?? Number.NaN;
  expect(share('one-reading')).toBeCloseTo(1 / Math.sqrt(12), 4);
  expect(share('two-readings')).toBeCloseTo(1 / Math.sqrt(6), 4);
});
