/**
 * Languages that the member states of the European Union ask for on cosmetics (Regulation (EC) No 1223/2009, Article
 * 19(5): set by the law of the state of sale). From memory, by their official languages; nobody has read the national laws.
 */
import type { ReferenceSource, SourcedRow } from '../sourced-row.ts';

export interface LabelLanguageRow extends SourcedRow {
  /** ISO 3166 code of two letters. */
  readonly country: string;
  /** Each a set of ISO 639 codes that is enough by itself. */
  readonly languages: readonly (readonly string[])[];
  readonly note?: string;
}

const row = (country: string, languages: LabelLanguageRow['languages'], note?: string): LabelLanguageRow => ({
  id: `label-language-${country.toLowerCase()}`, country, languages, ...(note !== undefined && { note }),
  source: 'memory', confidence: 'memory',
});

export const labelLanguages: readonly LabelLanguageRow[] = [
  row('AT', [['de']]),
  row('BE', [['nl', 'fr']], 'By region of sale: Dutch, French, and German in the east; both of the larger ones are the cautious choice.'),
  row('BG', [['bg']]),
  row('CY', [['el']]),
  row('CZ', [['cs']]),
  row('DE', [['de']]),
  row('DK', [['da']]),
  row('EE', [['et']]),
  row('ES', [['es']]),
  row('FI', [['fi', 'sv']]),
  row('FR', [['fr']]),
  row('GR', [['el']]),
  row('HR', [['hr']]),
  row('HU', [['hu']]),
  row('IE', [['en'], ['ga']]),
  row('IT', [['it']]),
  row('LT', [['lt']]),
  row('LU', [['fr'], ['de'], ['lb']]),
  row('LV', [['lv']]),
  row('MT', [['en'], ['mt']]),
  row('NL', [['nl']]),
  row('PL', [['pl']]),
  row('PT', [['pt']]),
  row('RO', [['ro']]),
  row('SE', [['sv']]),
  row('SI', [['sl']]),
  row('SK', [['sk']]),
];

export const labelLanguageSources: readonly ReferenceSource[] = [
  { id: 'memory', title: 'From memory: official languages of the member states', where: 'not seen in print', read: false },
];
