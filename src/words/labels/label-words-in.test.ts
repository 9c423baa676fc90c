import { describe, expect, it } from 'vitest';
import { LABEL_LANGUAGES } from '../label-language.ts';
import { labelWordsIn } from './label-words-in.ts';

describe('labelWordsIn', () => {
  // Regulation (EC) No 1223/2009, Article 19(1)(c): the words of the English version; the French of Swiss ordinance 817.023.31, Art. 9(1)(c).
  it('has the words of the law before a date', () => {
    expect(labelWordsIn('en').bestBefore).toBe('Best used before the end of');
    expect(labelWordsIn('fr').bestBefore.toLowerCase()).toBe('à utiliser de préférence avant fin');
  });

  it('has every word in every language, with where it comes from', () => {
    for (const language of LABEL_LANGUAGES) {
      const { madeIn, ...words } = labelWordsIn(language);
      expect(Object.values(words).every((word) => word.trim() === word && word !== '')).toBe(true);
      expect(madeIn('X')).toContain('X');
      expect(words.source).toMatch(/read|memory/);
    }
  });

  it('says of what nobody has read that it is from memory', () => {
    for (const language of ['fr', 'de', 'it', 'es'] as const)
      expect(labelWordsIn(language).source).toContain('from memory, check');
  });
});
