import { isCalendarDate, sayUsNetWeight, US_UNSUBSTANTIATED_WARNING } from '../../core/label/index.ts';
import { type Problem, problem } from '../../core/problem.ts';
import { exact } from '../../core/quantity/index.ts';
import { labelPrintWords } from '../../words/index.ts';
import {
  LABEL_ELEMENTS,
  type LabelDesign,
  type LabelElementKey,
  type LabelWording,
  MOVABLE_ELEMENTS,
  type TextIn,
} from './label-design.ts';
import { sayElement } from './say-element.ts';
import { LEAFLET_ID, type PieceWish } from './wish-pieces.ts';

/** Everything about a design and its wording that can be refused before a word is placed. */
export const checkDesign = (
  design: LabelDesign,
  wording: LabelWording,
  wishes: readonly PieceWish[],
): Problem[] => [
  ...checkPieces(design),
  ...checkLeaflet(design),
  ...checkWords(design, wording),
  ...checkContent(design, wording),
  ...checkPlaces(design, wording, wishes),
  ...checkUsWarning(design, wording, wishes),
];

const named = (element: LabelElementKey) => ({ element: labelPrintWords.elements[element] });

/** Nothing is turned round in silence: the largest letters are no smaller than the smallest. */
const checkLetters = ({ id, letters }: LabelDesign['pieces'][number]): Problem[] => {
  const { leastXHeightMm, mostXHeightMm } = letters ?? {};
  return leastXHeightMm === undefined || mostXHeightMm === undefined || mostXHeightMm >= leastXHeightMm
    ? []
    : [problem('label-letters-crossed', `${id}.letters`, { found: leastXHeightMm, allowed: mostXHeightMm })];
};

function checkPieces({ pieces, languages }: LabelDesign): Problem[] {
  const ids = pieces.map(({ id }) => id);
  const twice = ids.filter((id, index) => ids.indexOf(id) !== index || id === LEAFLET_ID || id.trim() === '');
  return [
    ...(pieces.length === 0 ? [problem('label-without-pieces', 'pieces')] : []),
    ...(languages.length === 0 ? [problem('label-without-language', 'languages')] : []),
    ...pieces.flatMap(checkLetters),
    ...twice.map((found) => problem('label-piece-name-taken', 'pieces', { found })),
  ];
}

const ARTICLE_19_2 = 'Regulation (EC) No 1223/2009, Article 19(2)';

/** The United States know no such leaflet for what a label of theirs must say; 21 CFR 701.3 has other ways out, which are not built. */
function checkLeaflet({ leaflet, market }: LabelDesign): Problem[] {
  if (leaflet === undefined) return [];
  const movable: readonly LabelElementKey[] = MOVABLE_ELEMENTS;
  const fixed = leaflet.elements.filter((element) => !movable.includes(element));
  return [
    ...(market === 'US' ? [problem('label-leaflet-not-in-market', 'leaflet', { found: market })] : []),
    ...(leaflet.elements.length === 0 ? [problem('label-leaflet-empty', 'leaflet.elements')] : []),
    ...fixed.map((found) =>
      problem('label-element-not-movable', 'leaflet.elements', {
        found,
        allowed: MOVABLE_ELEMENTS.join(', '),
        source: ARTICLE_19_2,
        parameters: named(found),
      }),
    ),
  ];
}

const NEEDED = ['name', 'ingredients', 'batch', 'responsible'] as const;

function checkWords({ languages, market }: LabelDesign, wording: LabelWording): Problem[] {
  const empty = NEEDED.filter((element) => isEmpty(wording[element]));
  const hasEnd = wording.durability !== undefined || wording.openedMonths !== undefined;
  const translated: readonly (readonly [LabelElementKey, TextIn | undefined])[] = [
    ['name', wording.name],
    ['function', wording.function],
    ['precautions', wording.precautions],
    ...(wording.otherLines ?? []).map((line) => ['other', line] as const),
  ];
  return [
    ...empty.map((element) => problem('label-text-missing', element, { parameters: named(element) })),
    ...(hasEnd || market === 'US' ? [] : [problem('label-durability-missing', 'durability')]),
    ...checkMonths(wording),
    ...checkDate(wording),
    ...translated.flatMap(([element, text]) =>
      languages
        .filter((language) => lacks(text, language))
        .map((language) =>
          problem('label-language-missing', element, {
            found: language,
            parameters: { ...named(element), language },
          }),
        ),
    ),
  ];
}

const isEmpty = (text: TextIn): boolean =>
  typeof text === 'string' ? text.trim() === '' : Object.values(text).every((each) => !each?.trim());

const lacks = (text: TextIn | undefined, language: LabelDesign['languages'][number]): boolean =>
  typeof text === 'object' && !isEmpty(text) && !text[language]?.trim();

/** 21 CFR 740.10(a), from memory: the statement stands on the principal display panel, which the front or whole label is. */
function checkUsWarning(
  { market }: LabelDesign,
  { precautions = '' }: LabelWording,
  wishes: readonly PieceWish[],
): Problem[] {
  const texts = typeof precautions === 'string' ? [precautions] : Object.values(precautions);
  const isWarned = texts.some((text) => text?.includes(US_UNSUBSTANTIATED_WARNING));
  const isInFront = wishes.some(
    ({ piece: { role }, elements }) =>
      (role === 'front' || role === 'whole') && elements.includes('precautions'),
  );
  return market !== 'US' || !isWarned || isInFront
    ? []
    : [problem('us-warning-not-in-front', 'precautions', { source: '21 CFR 740.10, from memory' })];
}

function checkMonths({ openedMonths }: LabelWording): Problem[] {
  if (openedMonths === undefined) return [];
  const isWhole = Number.isInteger(openedMonths) && openedMonths >= 1 && openedMonths <= 99;
  return isWhole
    ? []
    : [problem('opened-months-wrong', 'openedMonths', { found: String(openedMonths), allowed: '1 to 99' })];
}

function checkDate({ durability }: LabelWording): Problem[] {
  if (durability === undefined) return [];
  return isCalendarDate(durability.date)
    ? []
    : [problem('link-date-wrong', 'durability.date', { found: durability.date })];
}

function checkContent({ market }: LabelDesign, { content }: LabelWording): Problem[] {
  if (market === 'US') {
    const said = sayUsNetWeight(content.grams, 'content.grams');
    return said.ok ? [] : [...said.problems];
  }
  const grams = exact(content.grams);
  const isHeight = Number.isFinite(content.figureHeightMm) && content.figureHeightMm > 0;
  return [
    ...(grams.isFinite() && grams.gt(0)
      ? []
      : [problem('value-not-above', 'content.grams', { found: grams.toFixed(), allowed: 0 })]),
    ...(isHeight
      ? []
      : [
          problem('figure-height-wrong', 'content.figureHeightMm', {
            found: String(content.figureHeightMm),
          }),
        ]),
  ];
}

/** What has words but stands nowhere; the brand alone may be left out. */
function checkPlaces(design: LabelDesign, wording: LabelWording, wishes: readonly PieceWish[]): Problem[] {
  const isCarried = (element: LabelElementKey): boolean =>
    wishes.some(({ elements }) => elements.includes(element));
  const isSaid = (element: LabelElementKey): boolean =>
    element === 'opened' ? wording.openedMonths !== undefined : hasWords(element);
  const hasWords = (element: LabelElementKey): boolean => sayElement(element, wording, design).length > 0;
  return LABEL_ELEMENTS.filter(
    (element) => element !== 'brand' && !isCarried(element) && isSaid(element),
  ).map((element) => problem('label-element-nowhere', element, { parameters: named(element) }));
}
