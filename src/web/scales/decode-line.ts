import { exact, readDecimal, toText } from '../../core/quantity/index.ts';
import { gramsOfUnit, type MassUnit } from '../../core/weighing/index.ts';
import { noReading, type ScaleReading } from './reading.ts';

/** Where in a line of text a scale says what, as its booklet tells. */
export interface LinePattern {
  /** First character of the number, counted from 1; null: the first number in the line. */
  readonly numberFrom: number | null;
  readonly numberLength: number | null;
  /** line: as it stands behind the number, grams where nothing does. */
  readonly unit: MassUnit | 'line';
  /** Text that stands in a line of a weight that has settled; '': the scale marks none. */
  readonly stableMark: string;
  /** Text that stands in a line while it moves; '': none. */
  readonly movingMark: string;
}

/** What scales write for their units, in small letters. */
const UNIT_WORDS: Readonly<Record<string, MassUnit>> = {
  mg: 'mg',
  g: 'g',
  gm: 'g',
  gram: 'g',
  grams: 'g',
  kg: 'kg',
  t: 'tonne',
  ct: 'ct',
  car: 'ct',
  gn: 'grain',
  grn: 'grain',
  dwt: 'dwt',
  oz: 'oz',
  ozt: 'ozt',
  toz: 'ozt',
  lb: 'lb',
  lbs: 'lb',
};

/** Not the figures of a name, such as ID01. */
const NUMBER = /(?<![A-Za-z0-9])([+-]?)\s*(\d+(?:[.,]\d+)?|[.,]\d+)/;
/** More digits behind a number: thousands set apart, or no number at all. Nothing is guessed. */
const GOES_ON = /^[.,'’]?\s?\d/;
const WORD_BEHIND = /^\s*([A-Za-z]+)/;

/**
 * Reads one line that a scale wrote. A comma is taken for the point; where digits go on behind it, it is not understood.
 * A line without a number, such as a row of dashes above capacity, is no reading.
 */
export function decodeLine(line: string, pattern: LinePattern): ScaleReading {
  const { numberFrom, numberLength } = pattern;
  const start = numberFrom === null ? 0 : numberFrom - 1;
  const field = numberLength === null ? line.slice(start) : line.slice(start, start + numberLength);
  const found = NUMBER.exec(field);
  if (!found) return noReading('not-understood');
  const [whole, sign = '', digits = ''] = found;
  const value = readDecimal(`${sign}${digits.replace(',', '.')}`, 'reading');
  if (!value.ok) return noReading('not-understood');
  const behind = line.slice(start + found.index + whole.length);
  if (numberLength === null && GOES_ON.test(behind)) return noReading('not-understood');
  const unit = pattern.unit === 'line' ? unitBehind(behind) : pattern.unit;
  if (unit === undefined) return noReading('unit-unknown');
  return {
    grams: toText(gramsOfUnit(value.value, unit)),
    isStable: isStable(line, pattern),
    trouble: null,
    told: unit === 'g' ? null : { value: toText(exact(value.value)), unit },
  };
}

/** Nothing behind the number: grams. A word that is no unit of mass: not known. */
function unitBehind(text: string): MassUnit | undefined {
  const word = WORD_BEHIND.exec(text)?.[1]?.toLowerCase();
  return word === undefined ? 'g' : UNIT_WORDS[word];
}

const isStable = (line: string, { stableMark, movingMark }: LinePattern): boolean =>
  (stableMark === '' || line.includes(stableMark)) && (movingMark === '' || !line.includes(movingMark));
