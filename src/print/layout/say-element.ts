import { durabilityFigures, sayUsNetWeight } from '../../core/label/index.ts';
import { exact } from '../../core/quantity/index.ts';
import { type LabelLanguage, type LabelWords, labelWordsIn } from '../../words/index.ts';
import type { LabelDesign, LabelElementKey, LabelWording, PieceText, TextIn } from './label-design.ts';

type Said = readonly PieceText[];

/** The words of one element in all the languages of the label; nothing where the wording has nothing for it. */
export function sayElement(element: LabelElementKey, wording: LabelWording, design: LabelDesign): Said {
  const { languages } = design;
  switch (element) {
    case 'brand':
      return each(element, joined(wording.brand, languages, ' / '));
    case 'name':
      return each(element, joined(wording.name, languages, '\n'));
    case 'function':
      return each(element, joined(wording.function, languages, '\n'));
    case 'content':
      return each(element, sayContent(wording, design));
    case 'ingredients':
      return each(element, wording.ingredients, `${words(languages, 'ingredients')}:`);
    case 'precautions':
      return inLanguages(element, wording.precautions, languages);
    case 'other':
      return (wording.otherLines ?? []).flatMap((line) => inLanguages(element, line, languages));
    case 'durability':
      return sayDate(wording, design);
    case 'batch':
      return each(element, wording.batch, words(languages, 'batch'));
    case 'origin':
      return each(element, sayOrigin(wording, languages));
    case 'responsible':
      return each(element, sayResponsible(wording));
    case 'opened':
      return [];
  }
}

const each = (element: LabelElementKey, text: string, heading = ''): Said =>
  text.trim() === '' ? [] : [{ element, heading, text: text.trim() }];

/** Abbreviated wording or the symbol: Regulation (EC) No 1223/2009, Article 19(2). The symbol is drawn, not written. */
export const sayPointer = ({ leaflet, languages }: LabelDesign): Said =>
  leaflet?.pointer === 'words'
    ? [{ element: 'pointer', heading: '', text: words(languages, 'seeLeaflet') }]
    : [];

/** `Batch / Lot`; a word that two languages share stands once. */
const words = (languages: readonly LabelLanguage[], word: keyof PlainWords): string =>
  [...new Set(languages.map((language) => labelWordsIn(language)[word]))].join(' / ');
type PlainWords = Omit<LabelWords, 'madeIn' | 'source'>;

function textIn(text: TextIn | undefined, language: LabelLanguage): string {
  const said = typeof text === 'string' ? text : text?.[language];
  return said?.trim() ?? '';
}

const joined = (text: TextIn | undefined, languages: readonly LabelLanguage[], joint: string): string =>
  [...new Set(languages.map((language) => textIn(text, language)))].filter((said) => said !== '').join(joint);

/** Sentences are not mixed: each language is a paragraph of its own, with its code before it where there are several. */
function inLanguages(
  element: LabelElementKey,
  text: TextIn | undefined,
  languages: readonly LabelLanguage[],
): Said {
  if (typeof text === 'string' || languages.length === 1) return each(element, joined(text, languages, ' '));
  return languages.flatMap((language) => each(element, textIn(text, language), language.toUpperCase()));
}

const NO_BREAK = '\u00a0';

/** `80 g`; a line may end before a bracket alone. With the estimated sign beside it in the same field of vision where it is wished for. */
function sayContent({ content }: LabelWording, { market }: LabelDesign): string {
  if (market === 'US') {
    const said = sayUsNetWeight(content.grams);
    return said.ok ? said.value.replace(/ (?!\()/g, NO_BREAK) : '';
  }
  const grams = `${exact(content.grams).toFixed()}${NO_BREAK}g`;
  return content.hasEMark === true ? `${grams}${NO_BREAK}\u212e` : grams;
}

/** In the United States, where the month goes first, the ISO date: it cannot be read as another day. */
function sayDate({ durability }: LabelWording, { languages, market }: LabelDesign): Said {
  if (durability === undefined) return [];
  const figures = market === 'US' ? durability.date : durabilityFigures(durability.date);
  if (durability.sign === 'hourglass')
    return [{ element: 'durability', heading: '', text: figures, sign: 'hourglass' }];
  return each('durability', `${words(languages, 'bestBefore')} ${figures}`);
}

function sayOrigin({ originCountry }: LabelWording, languages: readonly LabelLanguage[]): string {
  if (originCountry === undefined) return '';
  const said = languages.map((language) => {
    const name = new Intl.DisplayNames([language === 'en' ? 'en-GB' : language], { type: 'region' }).of(
      originCountry,
    );
    return labelWordsIn(language).madeIn(name ?? originCountry);
  });
  return [...new Set(said)].join('\n');
}

const BEFORE_NAME = {
  maker: '',
  'manufactured-by': 'Manufactured by ',
  'manufactured-for': 'Manufactured for ',
  'distributed-by': 'Distributed by ',
} as const;

/** 21 CFR 701.12: where the name is not the maker's, the connection is said, such as "Manufactured for" (row us-name, from memory). */
const sayResponsible = ({ responsible, responsibleAs = 'maker' }: LabelWording): string =>
  responsible.trim() === '' ? '' : `${BEFORE_NAME[responsibleAs]}${responsible.trim()}`;
