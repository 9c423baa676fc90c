import type { Weight } from './face.ts';
import type { Tone } from './placed.ts';

interface TextStyle {
  readonly sizeMm: number;
  readonly leadingEm: number;
  readonly weight: Weight;
  readonly tone: Tone;
}

const style = (sizeMm: number, weight: Weight, tone: Tone = 'ink', leadingEm = 1.32): TextStyle => ({
  sizeMm,
  leadingEm,
  weight,
  tone,
});

/** Sizes of the em in millimetres; 3.7 mm is about 10.5 points. */
export const paperStyles = {
  title: style(7.6, 'bold', 'ink', 1.15),
  subtitle: style(4.2, 'regular', 'soft'),
  banner: style(5, 'bold'),
  heading: style(4.7, 'bold'),
  chapter: style(5.6, 'bold', 'ink', 1.2),
  part: style(4.7, 'bold', 'ink', 1.25),
  tableTitle: style(3.8, 'semibold', 'ink', 1.25),
  source: style(3.1, 'regular', 'soft', 1.3),
  factLabel: style(3.1, 'regular', 'soft'),
  factValue: style(4.2, 'semibold', 'ink', 1.26),
  caution: style(3.8, 'semibold'),
  columnTitle: style(3.1, 'semibold', 'soft', 1.2),
  cell: style(3.7, 'regular'),
  strongCell: style(4.3, 'bold', 'ink', 1.14),
  remark: style(3.2, 'semibold', 'ink', 1.3),
  note: style(3.6, 'regular'),
  signature: style(3.1, 'regular', 'soft'),
  footer: style(3.1, 'regular', 'soft'),
} as const;
