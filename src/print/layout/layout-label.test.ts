import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildLabel } from '../../../test/workshop/build-label.ts';
import { must, type Problem } from '../../core/problem.ts';
import { loadFaces } from '../paint/index.ts';
import type { FaceLayout, Label, LabelLayout } from './label.ts';
import { INSET_MM, SMALLEST_X_HEIGHT_MM } from './label-rules.ts';
import { layoutLabel } from './layout-label.ts';
import { type FaceSize, heightOf, widthOf } from './outline.ts';
import type { PlacedText } from './placed.ts';

const faces = loadFaces();
const layout = (label: Label): LabelLayout => must(layoutLabel(label, faces));
const textsOf = (face: FaceLayout): PlacedText[] => face.items.filter((item) => item.kind === 'text');
const wordsOf = (face: FaceLayout, element: string): string =>
  textsOf(face)
    .filter((item) => item.element === element)
    .map((item) => item.text + (item.hasSpaceAfter ? ' ' : ''))
    .join('')
    .trim();
const linesOf = (face: FaceLayout, element: string): number =>
  new Set(
    textsOf(face)
      .filter((item) => item.element === element)
      .map((item) => item.baselineMm),
  ).size;
function problemsOf(label: Label): readonly Problem[] {
  const result = layoutLabel(label, faces);
  return result.ok ? [] : result.problems;
}

const round = (diameterMm: number): FaceSize => ({ shape: 'round', diameterMm });
const rectangle = (widthMm: number, heightMm: number): FaceSize => ({
  shape: 'rectangle',
  widthMm,
  heightMm,
});

/** How far the corners of a text's ink reach beyond the face less its margin; not above 0 where all is inside. */
function overhang({ ink }: PlacedText, size: FaceSize): number {
  if (size.shape === 'rectangle') {
    const across = Math.max(INSET_MM - ink.left, ink.right - widthOf(size) + INSET_MM);
    return Math.max(across, INSET_MM - ink.top, ink.bottom - heightOf(size) + INSET_MM);
  }
  const radius = size.diameterMm / 2;
  const corners = [ink.left, ink.right].flatMap((x) => [ink.top, ink.bottom].map((y) => [x, y] as const));
  return Math.max(...corners.map(([x, y]) => Math.hypot(x - radius, y - radius))) - (radius - INSET_MM);
}

/** Pairs of texts of which the ink boxes share more than a hair. */
function collisionsOf(texts: readonly PlacedText[]): string[] {
  const hairMm = 0.02;
  return texts.flatMap((one, index) =>
    texts
      .slice(index + 1)
      .filter(
        ({ ink }) =>
          Math.min(one.ink.right, ink.right) - Math.max(one.ink.left, ink.left) > hairMm &&
          Math.min(one.ink.bottom, ink.bottom) - Math.max(one.ink.top, ink.top) > hairMm,
      )
      .map((other) => `${one.text} / ${other.text}`),
  );
}

/** Side bearings, in ems: the tail of a j reaches to the left of where the pen starts. Far less than the margin. */
const BEARING_EM = 0.08;

describe('layoutLabel', () => {
  it('sets every text of both faces, complete and in order', () => {
    const label = buildLabel();
    const { front, back } = layout(label);
    expect(wordsOf(front, 'front.productName')).toBe('Cedar and orange body butter');
    expect(wordsOf(front, 'front.declaredContentText')).toBe('80 g');
    expect(wordsOf(back, 'back.ingredientsText')).toBe(`Ingredients: ${label.back.ingredientsText}`);
    expect(wordsOf(back, 'back.batchNumber')).toBe('Batch CO-0418');
    expect(wordsOf(back, 'back.openedMonths')).toBe('12 M');
    expect(wordsOf(back, 'back.responsiblePersonText')).toBe(
      'Larkfold Butters, 3 Mill Yard, Hollinsby HX0 0ZZ, United Kingdom',
    );
  });

  it('wraps a long name, on a circle and on a rectangle', () => {
    const productName = 'Cedar, sweet orange and frankincense whipped body butter for very dry winter hands';
    for (const size of [round(66), rectangle(80, 55)]) {
      const { front } = layout(buildLabel({ productName, size }));
      expect(linesOf(front, 'front.productName')).toBeGreaterThan(1);
      expect(wordsOf(front, 'front.productName')).toBe(productName);
    }
  });

  it('never parts a figure from its unit', () => {
    const { front } = layout(buildLabel({ declaredContentText: '1.2 kg', size: rectangle(30, 60) }));
    expect(textsOf(front).find((item) => item.element === 'front.declaredContentText')?.text).toBe('1.2 kg');
  });

  it('draws figures higher than the legal minimum, whatever the digits', () => {
    for (const [declaredContentText, figureHeightMm] of [
      ['14 g', 2],
      ['80 g', 3],
      ['471 g', 4],
      ['1174 g', 6],
    ] as const) {
      const drawn = layout(buildLabel({ declaredContentText, figureHeightMm })).figureHeightMm;
      expect(drawn).toBeGreaterThanOrEqual(figureHeightMm + 0.1 - 1e-9);
    }
  });

  it('takes the largest letters that fit and says how high the smallest are', () => {
    const roomy = layout(buildLabel({}, { size: rectangle(120, 100) })).back.smallestXHeightMm;
    const tight = layout(buildLabel({}, { size: round(62) })).back.smallestXHeightMm;
    expect(roomy).toBe(1.4);
    expect(tight).toBeLessThan(roomy);
    expect(tight).toBeGreaterThanOrEqual(SMALLEST_X_HEIGHT_MM);
  });

  it('keeps the text clear of the open jar', () => {
    const { back } = layout(buildLabel({}, { size: rectangle(70, 50) }));
    const jar = back.items.filter((item) => item.element === 'back.openedMonths' && item.kind === 'path');
    const left = Math.min(...jar.map((item) => (item.kind === 'path' ? item.xMm : 0)));
    const top = Math.min(...jar.map((item) => (item.kind === 'path' ? item.yMm : 0)));
    const inTheWay = textsOf(back).filter(
      ({ ink, element }) => element !== 'back.openedMonths' && ink.right > left && ink.bottom > top,
    );
    expect(jar).toHaveLength(3);
    expect(inTheWay).toEqual([]);
  });

  it('sets optional texts only where they are given', () => {
    const { front, back } = layout({
      front: { size: round(50), productName: 'Balm', declaredContentText: '30 g', figureHeightMm: 2 },
      back: {
        size: round(50),
        ingredientsText: 'Cera Alba',
        batchNumber: 'B1',
        durabilityText: 'Best used before the end of 05/2027',
        responsiblePersonText: 'Larkfold',
      },
    });
    expect(new Set(front.items.map(({ element }) => element)).size).toBe(3);
    expect(back.items.some(({ element }) => element === 'back.openedMonths')).toBe(false);
  });

  it('keeps every glyph inside the outline and no line upon another, whatever the words and the size', () => {
    const word = fc.string({ unit: fc.constantFrom(...'aefgijlmopqstxyzÅŐgj'), minLength: 1, maxLength: 14 });
    const words = fc.array(word, { minLength: 1, maxLength: 25 }).map((list) => list.join(' '));
    const size = fc.oneof(
      fc.integer({ min: 25, max: 120 }).map(round),
      fc
        .tuple(fc.integer({ min: 20, max: 120 }), fc.integer({ min: 20, max: 120 }))
        .map(([w, h]) => rectangle(w, h)),
    );
    let setCount = 0;
    fc.assert(
      fc.property(words, words, size, (productName, ingredientsText, faceSize) => {
        const result = layoutLabel(
          buildLabel({ productName, size: faceSize }, { ingredientsText, size: faceSize }),
          faces,
        );
        if (!result.ok) return;
        setCount += 1;
        for (const face of [result.value.front, result.value.back]) {
          expect(face.smallestXHeightMm).toBeGreaterThanOrEqual(SMALLEST_X_HEIGHT_MM - 1e-9);
          for (const item of textsOf(face))
            expect(overhang(item, faceSize)).toBeLessThan(item.sizeMm * BEARING_EM);
          expect(collisionsOf(textsOf(face))).toEqual([]);
        }
      }),
      { numRuns: 60 },
    );
    expect(setCount).toBeGreaterThan(5);
  });

  it('refuses a round that is too small, names the element, and fits at the size that it asks for', () => {
    const [found] = problemsOf(buildLabel({}, { size: round(40) }));
    expect(found).toMatchObject({ code: 'label-diameter-too-small', found: 40 });
    expect(found?.where).toMatch(/^back\./);
    const asked = Number(found?.allowed);
    expect(problemsOf(buildLabel({}, { size: round(asked) }))).toEqual([]);
    expect(problemsOf(buildLabel({}, { size: round(asked - 1.5) }))).not.toEqual([]);
  });

  it('refuses a height that is too small, and fits at the height that it asks for', () => {
    const [found] = problemsOf(buildLabel({}, { size: rectangle(60, 25) }));
    expect(found).toMatchObject({ code: 'label-height-too-small', found: 25 });
    const asked = Number(found?.allowed);
    expect(problemsOf(buildLabel({}, { size: rectangle(60, asked) }))).toEqual([]);
    expect(problemsOf(buildLabel({}, { size: rectangle(60, asked - 1.5) }))).not.toEqual([]);
  });

  it('refuses a word that is wider than the label, and fits at the width that it asks for', () => {
    const narrow = (widthMm: number) =>
      buildLabel({ productName: 'Frankincense', size: rectangle(widthMm, 90) });
    const [found] = problemsOf(narrow(18));
    expect(found).toMatchObject({ code: 'label-width-too-small', where: 'front.productName', found: 18 });
    expect(problemsOf(narrow(Number(found?.allowed)))).toEqual([]);
    expect(problemsOf(narrow(Number(found?.allowed) - 1.5))).not.toEqual([]);
  });

  it('would rather refuse than draw the figures below the legal height', () => {
    expect(
      problemsOf(buildLabel({ figureHeightMm: 6, declaredContentText: '1100 g', size: rectangle(20, 60) })),
    ).toMatchObject([{ code: 'label-width-too-small', where: 'front.declaredContentText' }]);
  });

  it('refuses a jar that does not fit, and text that no sheet could hold', () => {
    expect(problemsOf(buildLabel({}, { size: rectangle(9, 60) }))[0]?.where).toMatch(/^back\./);
    const endless = 'Butyrospermum Parkii Butter, '.repeat(1500);
    expect(problemsOf(buildLabel({}, { ingredientsText: endless }))).toMatchObject([
      { code: 'label-text-too-long', where: 'back.ingredientsText' },
    ]);
  });

  it('reports all that is wrong at once', () => {
    const label = buildLabel(
      { productName: ' ', declaredContentText: 'one tin', figureHeightMm: 0, size: round(-1) },
      { batchNumber: '', openedMonths: 1.5, size: rectangle(80, 400) },
    );
    expect(problemsOf(label).map(({ code, where }) => `${code} ${where}`)).toEqual([
      'label-size-wrong front.size.diameterMm',
      'label-size-wrong back.size.heightMm',
      'figure-height-wrong front.figureHeightMm',
      'declared-content-without-figure front.declaredContentText',
      'opened-months-wrong back.openedMonths',
      'label-text-missing front.productName',
      'label-text-missing back.batchNumber',
    ]);
  });

  it('refuses sizes and heights that are no numbers', () => {
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(problemsOf(buildLabel({ size: round(bad) }))).toMatchObject([{ code: 'label-size-wrong' }]);
      expect(problemsOf(buildLabel({ figureHeightMm: bad }))).toMatchObject([
        { code: 'figure-height-wrong' },
      ]);
    }
  });

  it('asks for a date or for months after opening, and is content with either', () => {
    const neither = { durabilityText: '', openedMonths: undefined };
    const { openedMonths: _, ...back } = { ...buildLabel().back, ...neither };
    const label = buildLabel();
    expect(problemsOf({ ...label, back })).toMatchObject([{ code: 'label-durability-missing' }]);
    expect(problemsOf({ ...label, back: { ...back, openedMonths: 6 } })).toEqual([]);
    expect(problemsOf({ ...label, back: { ...back, durabilityText: 'Best before 05/2027' } })).toEqual([]);
  });

  it('takes 1 and 99 months after opening, not 0 and 100', () => {
    for (const openedMonths of [1, 99]) expect(problemsOf(buildLabel({}, { openedMonths }))).toEqual([]);
    for (const openedMonths of [0, 100]) {
      expect(problemsOf(buildLabel({}, { openedMonths }))).toMatchObject([{ code: 'opened-months-wrong' }]);
    }
  });
});
