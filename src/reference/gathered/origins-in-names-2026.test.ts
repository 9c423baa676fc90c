import { describe, expect, it } from 'vitest';
import { originInNameSources, originsInNames } from './origins-in-names-2026.ts';

describe('words of names that tell an origin', () => {
  it('are lower-case words, none twice for one origin, each with a source', () => {
    const sources = originInNameSources.map(({ id }) => id);
    const seen = originsInNames.flatMap(({ flag, words }) => words.map((word) => `${flag} ${word}`));
    expect(new Set(seen).size).toBe(seen.length);
    for (const { words, source } of originsInNames) {
      expect(sources).toContain(source);
      for (const word of words) expect(word).toMatch(/^[a-z]+( [a-z]+)*$/);
    }
  });

  it('hold the genera that the daisy family is named and known by', () => {
    // Asteraceae is the family of Aster, sunflower, chamomile, marigold and arnica (APG IV, recalled).
    const daisies = originsInNames.find(({ flag }) => flag === 'daisy-family')?.words ?? [];
    expect(daisies).toEqual(expect.arrayContaining(['helianthus', 'calendula', 'matricaria', 'arnica']));
    expect(daisies).not.toContain('prunus');
  });

  it('name every nut of a tree that Annex II of Regulation (EU) No 1169/2011 lists by genus', () => {
    const nuts = originsInNames.filter(({ flag }) => flag === 'tree-nut').flatMap(({ words }) => words);
    const listed = ['amygdalus', 'corylus', 'juglans', 'anacardium', 'carya', 'bertholletia', 'pistacia vera', 'macadamia'];
    expect(nuts).toEqual(expect.arrayContaining(listed));
  });

  it('take what bees and cows give as from an animal too', () => {
    const wordsOf = (wanted: string) =>
      originsInNames.filter(({ flag }) => flag === wanted).flatMap(({ words }) => words);
    expect(wordsOf('animal')).toEqual(expect.arrayContaining([...wordsOf('bee'), ...wordsOf('milk')]));
  });
});
