import { expect, it } from 'vitest';
import { expectSoundTable } from '../../../test/tables/expect-sound-table.ts';
import { labelLanguageSources, labelLanguages } from './label-languages-2026.ts';

it('has the 27 member states, each with a language, all from memory', () => {
  expect(labelLanguages).toHaveLength(27);
  expectSoundTable(labelLanguages, labelLanguageSources);
  for (const { country, languages, confidence } of labelLanguages) {
    expect(country).toMatch(/^[A-Z]{2}$/);
    expect(languages.flat().length).toBeGreaterThan(0);
    for (const code of languages.flat()) expect(code).toMatch(/^[a-z]{2}$/);
    expect(confidence).toBe('memory');
  }
});
