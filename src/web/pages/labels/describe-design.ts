import { labelWords } from '../../../words/index.ts';
import type { Described } from '../../show/find-differences.ts';
import type { DesignDraft, PieceDraft, SurfaceDraft } from './design-draft.ts';
import type { LabelSheet } from './label.ts';

const { design: words } = labelWords;

const surfaceInWords = (surface: SurfaceDraft): string => {
  const { shape, diameterMm, widthMm, heightMm, circumferenceMm } = surface;
  if (shape === 'round') return `${words.shapes.round}, ${diameterMm} mm`;
  return `${words.shapes[shape]}, ${shape === 'wrap' ? circumferenceMm : widthMm} × ${heightMm} mm`;
};

const pieceInWords = (
  { role, surface, code, artwork, sheetId, elements, leastMm, mostMm }: PieceDraft,
  sheets: readonly LabelSheet[],
): string =>
  [
    labelWords.roles[role],
    surfaceInWords(surface),
    elements === null ? '' : elements.map((element) => words.elementNames[element]).join(' + '),
    leastMm === '' ? '' : `${words.leastLetters} ${leastMm} mm`,
    mostMm === '' ? '' : `${words.mostLetters} ${mostMm} mm`,
    code === 'none' ? '' : words.codes[code],
    artwork ? words.artworkThere : '',
    sheets.find(({ id }) => id === sheetId)?.details.name ?? labelWords.plainPaper,
  ]
    .filter((part) => part !== '')
    .join(', ');

/** The draft in words, to be held against what somebody else wrote. */
export const describeDesign =
  (sheets: readonly LabelSheet[]) =>
  (draft: DesignDraft): Described => [
    [words.languages, draft.languages.map((language) => words.languageNames[language]).join(', ')],
    [words.pieces, draft.pieces.map((piece) => pieceInWords(piece, sheets)).join('; ')],
    [words.moves, words.movesChoices[draft.moves]],
    [words.pointer, words.pointers[draft.pointer]],
    [words.leaflet, surfaceInWords(draft.leafletSurface)],
    [words.durabilitySign, words.durabilitySigns[draft.durabilitySign]],
    [words.eMark, draft.hasEMark ? 'yes' : 'no'],
    [words.spare, draft.spare],
  ];
