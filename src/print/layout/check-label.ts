import { type Problem, problem } from '../../core/problem.ts';
import type { Faces, Weight } from './face.ts';
import { findMissingGlyphs } from './find-missing-glyphs.ts';
import type { Label } from './label.ts';
import { nameOfElement } from './name-of-element.ts';
import { type FaceSize, heightOf, widthOf } from './outline.ts';
import { SHEET } from './sheet-frame.ts';

/** Everything about a label that can be refused before a line is set. */
export function checkLabel(label: Label, faces: Faces): Problem[] {
  return [
    ...checkSize(label.front.size, 'front.size'),
    ...checkSize(label.back.size, 'back.size'),
    ...checkFigures(label),
    ...checkDurability(label),
    ...textsOf(label).flatMap((field) => checkText(field, faces)),
  ];
}

/** What an A4 sheet takes between its margins (see sheet-frame): larger faces cannot be printed whole. */
const LARGEST_MM = {
  width: SHEET.widthMm - 2 * SHEET.marginMm,
  height: SHEET.bottomMm - SHEET.topMm,
};

function checkSize(size: FaceSize, where: string): Problem[] {
  const measures: [string, number, number][] =
    size.shape === 'round'
      ? [['diameterMm', size.diameterMm, LARGEST_MM.width]]
      : [
          ['widthMm', widthOf(size), LARGEST_MM.width],
          ['heightMm', heightOf(size), LARGEST_MM.height],
        ];
  return measures
    .filter(([, found, allowed]) => !(Number.isFinite(found) && found > 0 && found <= allowed))
    .map(([field, found, allowed]) =>
      problem('label-size-wrong', `${where}.${field}`, {
        found: Number.isFinite(found) ? found : String(found),
        allowed,
      }),
    );
}

function checkFigures({ front }: Label): Problem[] {
  const problems: Problem[] = [];
  if (!(Number.isFinite(front.figureHeightMm) && front.figureHeightMm > 0)) {
    const found = String(front.figureHeightMm);
    problems.push(problem('figure-height-wrong', 'front.figureHeightMm', { found }));
  }
  if (front.declaredContentText.trim() !== '' && !/\p{Nd}/u.test(front.declaredContentText)) {
    const found = front.declaredContentText;
    problems.push(problem('declared-content-without-figure', 'front.declaredContentText', { found }));
  }
  return problems;
}

function checkDurability({ back }: Label): Problem[] {
  const months = back.openedMonths;
  if (months === undefined) {
    return back.durabilityText?.trim() ? [] : [problem('label-durability-missing', 'back.durabilityText')];
  }
  const isWhole = Number.isInteger(months) && months >= 1 && months <= 99;
  return isWhole
    ? []
    : [problem('opened-months-wrong', 'back.openedMonths', { found: String(months), allowed: '1 to 99' })];
}

interface Field {
  readonly where: string;
  readonly text: string | undefined;
  readonly weight: Weight;
  readonly isNeeded: boolean;
}

function textsOf({ front, back }: Label): Field[] {
  const needed = (where: string, text: string, weight: Weight = 'regular'): Field => ({
    where,
    text,
    weight,
    isNeeded: true,
  });
  const optional = (where: string, text: string | undefined, weight: Weight = 'regular'): Field => ({
    where,
    text,
    weight,
    isNeeded: false,
  });
  return [
    optional('front.brandName', front.brandName, 'semibold'),
    needed('front.productName', front.productName, 'bold'),
    optional('front.functionText', front.functionText),
    needed('front.declaredContentText', front.declaredContentText, 'bold'),
    needed('back.ingredientsText', back.ingredientsText),
    optional('back.precautionsText', back.precautionsText),
    ...(back.otherLines ?? []).map((line, index) => optional(`back.otherLines[${index}]`, line)),
    optional('back.durabilityText', back.durabilityText),
    needed('back.batchNumber', back.batchNumber),
    optional('back.originText', back.originText),
    needed('back.responsiblePersonText', back.responsiblePersonText),
  ];
}

function checkText({ where, text, weight, isNeeded }: Field, faces: Faces): Problem[] {
  if (text === undefined || text.trim() === '') {
    return isNeeded
      ? [problem('label-text-missing', where, { parameters: { element: nameOfElement(where) } })]
      : [];
  }
  return findMissingGlyphs(text, where, faces[weight]);
}
