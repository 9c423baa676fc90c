import { useId } from 'react';
import { placeOn } from '../../../print/layout/index.ts';
import { labelWords } from '../../../words/index.ts';
import styles from './label.module.css';
import type { SheetGeometry } from './label.ts';

interface Props {
  readonly geometry: SheetGeometry;
  readonly name: string;
  /** Where the first label goes, counted from 1; with it the picture is there to choose from. */
  readonly first?: number;
  readonly onChoose?: (position: number) => void;
  /** How many labels follow on this sheet. */
  readonly count?: number;
}

const percent = (part: number, whole: number): string => `${(part / whole) * 100}%`;

function placeOf(geometry: SheetGeometry, index: number) {
  const { pageWidthMm, pageHeightMm, label } = geometry;
  const [left, top] = placeOn(geometry, index);
  const [width, height] =
    label.shape === 'round' ? [label.diameterMm, label.diameterMm] : [label.widthMm, label.heightMm];
  return {
    left: percent(left, pageWidthMm),
    top: percent(top, pageHeightMm),
    width: percent(width, pageWidthMm),
    height: percent(height, pageHeightMm),
    borderRadius: label.shape === 'round' ? '50%' : `${Math.min(label.cornerRadiusMm, 4)}px`,
  };
}

/** A sheet with its labels as they lie, numbered; where it can be chosen from, a tap says where to start. */
export function SheetPicture({ geometry, name, first, onChoose, count = 0 }: Props) {
  const group = useId();
  const numbers = Array.from({ length: geometry.columns * geometry.rows }, (_, index) => index + 1);
  const isPrinted = (number: number): boolean =>
    first !== undefined && number >= first && number < first + count;
  const box = { aspectRatio: `${geometry.pageWidthMm} / ${geometry.pageHeightMm}` };
  if (onChoose === undefined)
    return (
      <div className={styles.sheet} style={box} role="img" aria-label={name}>
        {numbers.map((number) => (
          <span key={number} className={styles.label} style={placeOf(geometry, number - 1)}>
            {number}
          </span>
        ))}
      </div>
    );
  return (
    <div className={styles.sheet} style={box} role="radiogroup" aria-label={name}>
      {numbers.map((number) => (
        <label
          key={number}
          className={`${styles.label} ${styles.choose} ${isPrinted(number) ? styles.printed : ''} ${first !== undefined && number < first ? styles.used : ''}`}
          style={placeOf(geometry, number - 1)}
        >
          <input
            type="radio"
            name={group}
            checked={number === first}
            onChange={() => onChoose(number)}
            aria-label={labelWords.position(number)}
          />
          <span aria-hidden="true">{number}</span>
        </label>
      ))}
    </div>
  );
}
