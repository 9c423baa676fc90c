/** Languages for which the words of a label stand ready, by their ISO 639-1 codes. */
export const LABEL_LANGUAGES = ['en', 'fr', 'de', 'it', 'es'] as const;
export type LabelLanguage = (typeof LABEL_LANGUAGES)[number];
