import type { LabelLanguage } from '../label-language.ts';
import { germanLabelWords } from './label-words.de.ts';
import { englishLabelWords } from './label-words.en.ts';
import { spanishLabelWords } from './label-words.es.ts';
import { frenchLabelWords } from './label-words.fr.ts';
import { italianLabelWords } from './label-words.it.ts';
import type { LabelWords } from './label-words.ts';

const words: Readonly<Record<LabelLanguage, LabelWords>> = {
  en: englishLabelWords,
  fr: frenchLabelWords,
  de: germanLabelWords,
  it: italianLabelWords,
  es: spanishLabelWords,
};

export const labelWordsIn = (language: LabelLanguage): LabelWords => words[language];
