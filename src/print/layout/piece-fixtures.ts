import { labelPrintWords, printWords } from '../../words/index.ts';
import type { Faces } from './face.ts';
import { HAND_IN_BOOK_HEIGHT_MM, HAND_IN_BOOK_WIDTH_MM, placeHandInBook } from './hand-in-book.ts';
import type { LabelPiece } from './label-design.ts';
import { OPEN_JAR_HEIGHT_MM, OPEN_JAR_WIDTH_MM, placeOpenJar } from './open-jar.ts';
import type { Fixture } from './symbol-row.ts';

/** The symbols of a piece: hand in book first, then the open jar. */
export function symbolsOf(piece: LabelPiece, faces: Faces): Fixture[] {
  const { id, hasHandInBook, openedMonths } = piece;
  return [
    ...(hasHandInBook === true ? [handInBook(`${id}.symbol`)] : []),
    ...(openedMonths === undefined ? [] : [openJar(openedMonths, `${id}.opened`, faces)]),
  ];
}

const handInBook = (element: string): Fixture => ({
  element,
  alt: labelPrintWords.alt.handInBook,
  widthMm: HAND_IN_BOOK_WIDTH_MM,
  heightMm: HAND_IN_BOOK_HEIGHT_MM,
  draw: (left, top) => placeHandInBook(left, top, element),
});

const openJar = (months: number, element: string, faces: Faces): Fixture => ({
  element,
  alt: printWords.label.openJar(months),
  widthMm: OPEN_JAR_WIDTH_MM,
  heightMm: OPEN_JAR_HEIGHT_MM,
  draw: (left, top) =>
    placeOpenJar(
      months,
      { left, top, right: left + OPEN_JAR_WIDTH_MM, bottom: top + OPEN_JAR_HEIGHT_MM },
      element,
      faces,
    ),
});
