import { type Problem, problem } from '../../core/problem.ts';
import { labelPrintWords } from '../../words/index.ts';
import type { Faces } from './face.ts';
import { findMissingGlyphs } from './find-missing-glyphs.ts';
import type { LabelPiece } from './label-design.ts';
import { SMALLEST_X_HEIGHT_MM } from './label-rules.ts';
import type { Surface } from './surface.ts';
import { weightOf } from './weight-of.ts';

/** Everything about a piece that can be refused before a line is set. */
export const checkPiece = (piece: LabelPiece, faces: Faces): Problem[] => [
  ...checkSurface(piece),
  ...checkLetters(piece),
  ...checkGlyphs(piece, faces),
];

/** A sheet of A3 across; nothing larger is stuck on a tin. Common practice, no source. */
const LARGEST_MM = 420;

function checkSurface({ id, surface }: LabelPiece): Problem[] {
  return measuresOf(surface)
    .filter(({ mm, least, most }) => !(Number.isFinite(mm) && mm <= most && (least === 0 ? mm >= 0 : mm > 0)))
    .map(({ field, mm, most }) =>
      problem('label-surface-wrong', `${id}.${field}`, { found: String(mm), allowed: most }),
    );
}

interface Measure {
  readonly field: string;
  readonly mm: number;
  /** 0: may be 0. */
  readonly least: number;
  readonly most: number;
}

function measuresOf(surface: Surface): Measure[] {
  const side = (field: string, mm: number): Measure => ({ field, mm, least: 1, most: LARGEST_MM });
  const part = (field: string, mm: number, most: number): Measure => ({ field, mm, least: 0, most });
  if (surface.shape === 'round') return [side('diameterMm', surface.diameterMm)];
  if (surface.shape === 'wrap') {
    const { circumferenceMm, heightMm, overlapMm } = surface;
    return [
      side('circumferenceMm', circumferenceMm),
      side('heightMm', heightMm),
      part('overlapMm', overlapMm, circumferenceMm / 4),
    ];
  }
  const { widthMm, heightMm, cornerRadiusMm = 0 } = surface;
  return [
    side('widthMm', widthMm),
    side('heightMm', heightMm),
    part('cornerRadiusMm', cornerRadiusMm, Math.min(widthMm, heightMm) / 2),
  ];
}

function checkLetters({ id, leastXHeightMm, mostXHeightMm }: LabelPiece): Problem[] {
  const isRight = leastXHeightMm >= SMALLEST_X_HEIGHT_MM && Number.isFinite(mostXHeightMm);
  return isRight
    ? []
    : [
        problem('label-letters-wrong', `${id}.letters`, {
          found: String(leastXHeightMm),
          allowed: SMALLEST_X_HEIGHT_MM,
        }),
      ];
}

const checkGlyphs = ({ id, texts }: LabelPiece, faces: Faces): Problem[] =>
  texts.flatMap(({ element, heading, text }) => {
    const where = `${id}.${element}`;
    const inText = findMissingGlyphs(text, where, faces[weightOf(element)]);
    return [...(heading === '' ? [] : findMissingGlyphs(heading, where, faces.bold)), ...inText];
  });

/** `lid.ingredients` is "the list of ingredients" to a person. */
export function nameOfPlace(path: string): string {
  const key = path.slice(path.lastIndexOf('.') + 1);
  return isNamed(key) ? labelPrintWords.elements[key] : path;
}

const isNamed = (key: string): key is keyof typeof labelPrintWords.elements =>
  Object.hasOwn(labelPrintWords.elements, key);
