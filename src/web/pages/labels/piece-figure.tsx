import type { ReactNode } from 'react';
import { labelWords, sayNumber } from '../../../words/index.ts';
import { Face } from './face.tsx';
import styles from './label.module.css';
import type { Piece } from './label.ts';
import { Notes } from './notes.tsx';

interface Props {
  readonly piece: Piece;
  /** Beside a note: the means to mend it. */
  readonly mend?: (note: Piece['notes'][number]) => ReactNode;
}

const figuresOf = ({ widthMm, heightMm, smallestXHeightMm, figureHeightMm, moduleMm }: Piece): string =>
  [
    labelWords.pieceIs(
      widthMm === heightMm ? sayNumber(widthMm) : `${sayNumber(widthMm)} × ${sayNumber(heightMm)}`,
    ),
    smallestXHeightMm === null ? '' : labelWords.letters(hundredths(smallestXHeightMm)),
    figureHeightMm === null ? '' : labelWords.figures(hundredths(figureHeightMm)),
    moduleMm === null ? '' : labelWords.module(hundredths(moduleMm)),
  ]
    .filter((part) => part !== '')
    .join('; ');

const hundredths = (mm: number): string => sayNumber(Math.round(mm * 100) / 100);

/** One piece of a label at true size, what was measured on it, and what is to be mended. */
export const PieceFigure = ({ piece, mend }: Props) => (
  <div className={styles.piece}>
    <h3>{labelWords.roles[piece.role]}</h3>
    <Face svg={piece.svg} name={labelWords.roles[piece.role]} />
    {piece.svg === '' && <p>{labelWords.notDrawn}</p>}
    <Notes notes={piece.notes} mend={mend} />
    <p className="soft small">{figuresOf(piece)}</p>
  </div>
);
