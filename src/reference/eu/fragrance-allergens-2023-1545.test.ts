import { expect, it } from 'vitest';
import { expectSoundTable, isCasNumber } from '../../../test/tables/expect-sound-table.ts';
import {
  allergenCasTraps,
  allergenNamingRules,
  fragranceAllergenCounts,
  fragranceAllergenSources,
  fragranceAllergens,
} from './fragrance-allergens-2023-1545.ts';

it('has as many rows, new entries, numbers, extracts and collective names as published', () => {
  const numbers = new Set(fragranceAllergens.flatMap((row) => row.match.cas));
  expect({
    entries: fragranceAllergens.length,
    oldListEntries: fragranceAllergens.filter((row) => row.gb.listed).length,
    newEntries: fragranceAllergens.filter((row) => row.requiredForPlacingFrom === '2026-08-01').length,
    labelNames: new Set(fragranceAllergens.map((row) => row.labelName)).size,
    distinctCas: numbers.size,
    naturalExtractEntries: fragranceAllergens.filter((row) => row.kind === 'natural-extract').length,
    collectiveNameEntries: fragranceAllergens.filter((row) => row.collectiveName !== undefined).length,
  }).toEqual(fragranceAllergenCounts);
  expect(fragranceAllergenCounts.entries).toBe(81);
});

it('has sound rows, rules and shared numbers', () => {
  expectSoundTable(fragranceAllergens, fragranceAllergenSources);
  expectSoundTable(allergenCasTraps, fragranceAllergenSources);
  expectSoundTable(allergenNamingRules, fragranceAllergenSources);
  expect(fragranceAllergens.flatMap((row) => row.match.cas).filter((cas) => !isCasNumber(cas))).toEqual([]);
  expect(allergenCasTraps.filter(({ cas }) => !isCasNumber(cas))).toEqual([]);
});

it('has entry numbers that are unique and thresholds of 0.001 and 0.01 per cent', () => {
  expect(new Set(fragranceAllergens.map(({ entry }) => entry)).size).toBe(81);
  for (const row of fragranceAllergens) {
    expect([row.thresholdLeaveOnPercent, row.thresholdRinseOffPercent]).toEqual([0.001, 0.01]);
  }
});

it('matches its own label name and every member, by name or by number', () => {
  for (const row of fragranceAllergens) {
    const names = new Set(row.match.names.map((name) => name.toLowerCase()));
    expect(names.has(row.labelName.toLowerCase())).toBe(true);
    const numbers = new Set(row.match.cas);
    const lost = row.members.filter(
      ({ name, cas }) => !names.has(name.toLowerCase()) && !cas.some((number) => numbers.has(number)),
    );
    expect(lost).toEqual([]);
  }
});

it('keeps Great Britain and the later members inside the numbers of the entry', () => {
  for (const row of fragranceAllergens) {
    const numbers = new Set(row.match.cas);
    expect((row.gb.cas ?? []).filter((cas) => !numbers.has(cas))).toEqual([]);
    expect((row.newMembers?.cas ?? []).filter((cas) => !numbers.has(cas))).toEqual([]);
  }
});

it('names in its shared numbers only entries that it has', () => {
  const ids = new Set(fragranceAllergens.map(({ id }) => id));
  const named = allergenCasTraps.flatMap((trap) => trap.materials.flatMap((row) => row.allergenEntryId ?? []));
  expect(named.filter((id) => !ids.has(id))).toEqual([]);
});
