import { expect, it } from 'vitest';
import { expectSoundTable } from '../../../test/tables/expect-sound-table.ts';
import {
  netContentsNationalPeculiarities,
  netContentsRecordRules,
  netContentsScope,
  packersRuleSources,
  packersRules,
} from './packers-rules-76-211.ts';

it('has the three rules in force and the older French one beside them', () => {
  expect(packersRules.filter(({ inForce }) => inForce).map(({ rule }) => rule)).toEqual([1, 2, 3]);
  expectSoundTable(packersRules, packersRuleSources);
});

it('has scope, records and peculiarities with their sources', () => {
  expect(netContentsScope).toHaveLength(6);
  expect(netContentsRecordRules).toHaveLength(8);
  expectSoundTable(netContentsScope, packersRuleSources);
  expectSoundTable(netContentsRecordRules, packersRuleSources);
  expectSoundTable(netContentsNationalPeculiarities, packersRuleSources);
});
