import type { labels, orders } from '../../contract/index.ts';
import type { Durability, LabelElement, LabelElementName, LabelText } from '../../core/label/index.ts';
import { type Problem, problem } from '../../core/problem.ts';
import type { LabelElementKey, LabelWording, TextIn } from '../../print/layout/index.ts';
import { labelPrintWords, say } from '../../words/index.ts';
import { saying } from '../saying.ts';
import type { WorkshopDetails } from '../workshop-details.ts';

export interface WordsOf {
  readonly text: LabelText;
  readonly details: orders.ProductDetails;
  readonly house: WorkshopDetails;
  readonly languages: readonly labels.LabelLanguage[];
  readonly durability: Durability | null;
  readonly isTrial: boolean;
}

/** What is missing stands there as three dots. */
const DOTS = '\u2026';

type Wording = { -readonly [Key in keyof LabelWording]: LabelWording[Key] };

/** The words of a label as they are drawn, and what lacks in a language that it is printed in. */
export function wordLabel(of: WordsOf): {
  readonly wording: LabelWording;
  readonly lacking: readonly Problem[];
} {
  const { text, details, house } = of;
  const found = (name: LabelElementName): LabelElement | undefined =>
    text.elements.find((each) => each.element === name && each.state !== 'not-needed');
  const said = (name: LabelElementName): string | undefined => {
    const element = found(name);
    return element && (element.text || DOTS);
  };
  const inAll = (element: 'function' | 'precautions', field: 'functionText' | 'precautions') =>
    translate(said(element), field, of);
  const functionText = inAll('function', 'functionText');
  const precautions = inAll('precautions', 'precautions');
  const wording: Wording = {
    brand: house.name,
    name: nameIn(of),
    content: {
      grams: details.declaredGrams,
      figureHeightMm: text.figureHeightMm,
      hasEMark: found('e-mark')?.state === 'there',
    },
    ingredients: said('ingredients') ?? DOTS,
    otherLines: otherLinesOf(said('contact'), of.isTrial),
    batch: said('batch-number') ?? DOTS,
    responsible: said('responsible-person') ?? DOTS,
  };
  if (functionText) wording.function = functionText;
  if (precautions) wording.precautions = precautions;
  endOf(of, found, wording);
  if (found('country-of-origin')?.state === 'there') wording.originCountry = house.country;
  return { wording, lacking: [...lackOf('function', functionText), ...lackOf('precautions', precautions)] };
}

function endOf(
  { durability, details }: WordsOf,
  found: (name: LabelElementName) => LabelElement | undefined,
  wording: Wording,
): void {
  const date = found('minimum-durability');
  if (date?.state === 'there' && durability !== null) {
    wording.durability = { date: durability.date, sign: date.sign === 'hourglass' ? 'hourglass' : 'words' };
  }
  if (found('period-after-opening') && details.openedMonths !== null)
    wording.openedMonths = details.openedMonths;
}

const otherLinesOf = (contact: string | undefined, isTrial: boolean): string[] => [
  ...(contact === undefined ? [] : [contact]),
  ...(isTrial ? [say(saying('label-trial-line'))] : []),
];

/** Where a language has no name of its own, the product is called the same there. */
function nameIn({ details, languages }: WordsOf): TextIn {
  const names = languages.map(
    (language) => (language === 'en' ? '' : details.texts[language]?.name) || details.name,
  );
  return Object.fromEntries(languages.map((language, index) => [language, names[index]]));
}

/** The maker's own wording in each language; dots where one lacks. undefined: nothing is said at all. */
function translate(
  english: string | undefined,
  field: 'functionText' | 'precautions',
  { details, languages }: WordsOf,
): Readonly<Partial<Record<labels.LabelLanguage, string>>> | undefined {
  const own = (language: labels.LabelLanguage): string =>
    language === 'en' ? (english ?? details[field]) : (details.texts[language]?.[field] ?? '');
  const texts = languages.map((language) => [language, own(language).trim()] as const);
  if (english === undefined && texts.every(([, text]) => text === '')) return undefined;
  return Object.fromEntries(texts.map(([language, text]) => [language, text || DOTS]));
}

const lackOf = (
  element: LabelElementKey,
  texts: Readonly<Partial<Record<labels.LabelLanguage, string>>> | undefined,
): Problem[] =>
  Object.entries(texts ?? {})
    .filter(([language, text]) => text === DOTS && language !== 'en')
    .map(([language]) =>
      problem('label-language-missing', element, {
        found: language,
        parameters: { element: labelPrintWords.elements[element], language },
      }),
    );
