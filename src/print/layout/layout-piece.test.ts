import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildDesign, buildWording } from '../../../test/workshop/build-design.ts';
import { printTools } from '../../../test/workshop/print-tools.ts';
import { must, type Problem } from '../../core/problem.ts';
import { composePieces } from './compose-pieces.ts';
import type { DesignPiece, LabelDesign, LabelPiece, LabelWording } from './label-design.ts';
import { INSET_MM, SMALLEST_X_HEIGHT_MM, STICKER_INSET_MM } from './label-rules.ts';
import { layoutPiece } from './layout-piece.ts';
import { type FaceSize, heightOf, widthOf } from './outline.ts';
import type { PieceLayout } from './piece-layout.ts';
import type { Placed, PlacedText } from './placed.ts';
import type { Surface } from './surface.ts';

const round = (diameterMm: number): Surface => ({ shape: 'round', diameterMm });
const rectangle = (widthMm: number, heightMm: number, cornerRadiusMm = 0): Surface => ({
  shape: 'rectangle',
  widthMm,
  heightMm,
  cornerRadiusMm,
});

function pieceOf(
  piece: Partial<DesignPiece>,
  wording: Partial<LabelWording> = {},
  design: Partial<LabelDesign> = {},
): LabelPiece {
  const whole = { id: 'tin', role: 'whole', surface: rectangle(90, 70), ...piece } as const;
  const others: DesignPiece[] =
    whole.role === 'whole' ? [] : [{ id: 'other', role: 'whole', surface: rectangle(200, 200) }];
  const composed = composePieces(
    buildDesign({ ...design, pieces: [whole, ...others] }),
    buildWording(wording),
  );
  const [first] = must(composed);
  if (first === undefined) throw new Error('a design has a piece');
  return first;
}

const layout = (...question: Parameters<typeof pieceOf>): PieceLayout =>
  must(layoutPiece(pieceOf(...question), printTools));
function problemsOf(...question: Parameters<typeof pieceOf>): readonly Problem[] {
  const result = layoutPiece(pieceOf(...question), printTools);
  return result.ok ? [] : result.problems;
}
const textsOf = ({ items }: PieceLayout): PlacedText[] => items.filter((item) => item.kind === 'text');
const wordsOf = (piece: PieceLayout, element: string): string =>
  textsOf(piece)
    .filter((item) => item.element === `${piece.id}.${element}`)
    .map((item) => item.text + (item.hasSpaceAfter ? ' ' : ''))
    .join('')
    .trim();

/** How far a corner of ink reaches beyond the outline less its margin; not above 0 where all is inside. */
function overhang({ ink }: PlacedText, size: FaceSize, insetMm: number): number {
  const corners = [ink.left, ink.right].flatMap((x) => [ink.top, ink.bottom].map((y) => [x, y] as const));
  return Math.max(...corners.map(([x, y]) => beyond(x, y, size, insetMm)));
}

/** Distance beyond a round, or a rectangle whose corners are quarters of a circle. */
function beyond(x: number, y: number, size: FaceSize, insetMm: number): number {
  if (size.shape === 'round') {
    const radius = size.diameterMm / 2;
    return Math.hypot(x - radius, y - radius) - (radius - insetMm);
  }
  const radius = Math.max(0, (size.cornerRadiusMm ?? 0) - insetMm);
  const [halfWidth, halfHeight] = [widthOf(size) / 2 - insetMm, heightOf(size) / 2 - insetMm];
  const dx = Math.abs(x - widthOf(size) / 2) - (halfWidth - radius);
  const dy = Math.abs(y - heightOf(size) / 2) - (halfHeight - radius);
  return Math.hypot(Math.max(dx, 0), Math.max(dy, 0)) + Math.min(Math.max(dx, dy), 0) - radius;
}

/** Side bearings, in ems: the tail of a j reaches to the left of where the pen starts. Far less than the margin. */
const BEARING_EM = 0.08;

const edgeOf = (item: Placed): number =>
  item.kind === 'boxes' ? Math.max(...item.boxes.map(([left, , width]) => item.xMm + left + width)) : 0;

describe('layoutPiece', () => {
  it('sets everything that a piece has to say, complete and in order', () => {
    const whole = layout({}, { openedMonths: 12 });
    expect(wordsOf(whole, 'name')).toBe('Cedar and orange body butter');
    expect(wordsOf(whole, 'content')).toBe('80 g');
    expect(wordsOf(whole, 'ingredients')).toBe(`Ingredients: ${buildWording().ingredients}`);
    expect(wordsOf(whole, 'durability')).toBe('Best used before the end of 05/2027');
    expect(wordsOf(whole, 'batch')).toBe('Batch CO-0418');
    expect(wordsOf(whole, 'opened')).toBe('12 M');
  });

  it('gives a small sticker its lot and date, on a rectangle and on a round', () => {
    for (const surface of [rectangle(30, 15, 1.5), round(20)]) {
      const sticker = layout({ role: 'sticker', surface });
      expect(wordsOf(sticker, 'batch')).toBe('Batch CO-0418');
      expect(wordsOf(sticker, 'durability')).toBe('Best used before the end of 05/2027');
      expect(sticker.smallestXHeightMm).toBeGreaterThanOrEqual(SMALLEST_X_HEIGHT_MM);
    }
  });

  it('keeps text out of the overlap of a strip, and its front on the two fifths that one sees', () => {
    const surface = { shape: 'wrap', circumferenceMm: 200, heightMm: 45, overlapMm: 8 } as const;
    const strip = layout({ surface }, { openedMonths: 6 });
    expect(strip.size).toEqual({ shape: 'rectangle', widthMm: 208, heightMm: 45 });
    expect(Math.max(...textsOf(strip).map(({ ink }) => ink.right))).toBeLessThanOrEqual(198);
    const name = textsOf(strip).filter(({ element }) => element === 'tin.name');
    expect(Math.max(...name.map(({ ink }) => ink.right))).toBeLessThanOrEqual(80 - INSET_MM);
  });

  it('draws figures and estimated sign above their legal heights', () => {
    for (const [grams, figureHeightMm] of [
      ['14', 2],
      ['80', 3],
      ['471', 4],
      ['1174', 6],
    ] as const) {
      const content = { grams, figureHeightMm, hasEMark: true };
      for (const role of ['front', 'whole'] as const) {
        const drawn = layout({ role, surface: rectangle(90, 90) }, { content });
        expect(drawn.figureHeightMm).toBeGreaterThanOrEqual(figureHeightMm + 0.1 - 1e-9);
        // SI 2006/659, regulation 2, and Directive 76/211/EEC: at least 3 mm.
        expect(drawn.eMarkHeightMm).toBeGreaterThanOrEqual(3.1 - 1e-9);
        expect(wordsOf(drawn, 'content')).toBe(`${grams} g ℮`);
      }
    }
  });

  it('keeps every glyph inside the outline less its inset, whatever the words, the shape and the size', () => {
    const word = fc.string({ unit: fc.constantFrom(...'aefgijlmopqstxyzÅŐgj'), minLength: 1, maxLength: 14 });
    const words = fc.array(word, { minLength: 1, maxLength: 22 }).map((list) => list.join(' '));
    const side = fc.integer({ min: 18, max: 120 });
    const surface = fc.oneof(
      side.map(round),
      fc.tuple(side, side, fc.integer({ min: 0, max: 9 })).map((sides) => rectangle(...sides)),
      fc.tuple(side, side).map(
        ([circumference, heightMm]): Surface => ({
          shape: 'wrap',
          circumferenceMm: circumference * 3,
          heightMm,
          overlapMm: 6,
        }),
      ),
    );
    const role = fc.constantFrom('front', 'back', 'whole', 'sticker');
    let setCount = 0;
    fc.assert(
      fc.property(words, words, surface, role, (name, ingredients, shape, of) => {
        const elements = of === 'sticker' ? (['batch', 'ingredients'] as const) : undefined;
        const piece = pieceOf(
          { role: of, surface: shape, ...(elements && { elements }) },
          { name, ingredients, openedMonths: 12 },
        );
        const result = layoutPiece(piece, printTools);
        if (!result.ok) return;
        setCount += 1;
        const insetMm = of === 'sticker' ? STICKER_INSET_MM : INSET_MM;
        expect(result.value.smallestXHeightMm).toBeGreaterThanOrEqual(SMALLEST_X_HEIGHT_MM - 1e-9);
        for (const item of textsOf(result.value))
          expect(overhang(item, result.value.size, insetMm)).toBeLessThan(item.sizeMm * BEARING_EM);
      }),
      { numRuns: 60 },
    );
    expect(setCount).toBeGreaterThan(10);
  }, 60_000);

  it('names each element that finds no room with what it lacks, and fits where it says that it would', () => {
    const problems = problemsOf({ role: 'back', surface: rectangle(50, 20) });
    expect(problems.map(({ code, where }) => `${code} ${where}`)).toEqual(
      expect.arrayContaining([
        'label-element-lacks-room tin.batch',
        'label-element-lacks-room tin.responsible',
      ]),
    );
    for (const each of problems) {
      const { lackMm, measure } = each.parameters ?? {};
      expect(measure).toBe('height');
      expect(Number(lackMm)).toBeCloseTo(Number(each.allowed) - 20, 6);
    }
    const enough = Math.max(...problems.map(({ allowed }) => Number(allowed)));
    expect(problemsOf({ role: 'back', surface: rectangle(50, enough) })).toEqual([]);
    expect(problemsOf({ role: 'back', surface: rectangle(50, enough - 0.3) })).not.toEqual([]);
  });

  it('says how much wider a round has to be, or a rectangle for its longest word', () => {
    const [tooRound] = problemsOf({ role: 'back', surface: round(30) });
    expect(tooRound?.parameters).toMatchObject({ measure: 'diameter', piece: 'the back' });
    const narrow = problemsOf({ role: 'front', surface: rectangle(16, 90) }, { name: 'Frankincense' });
    const word = narrow.find(({ where }) => where === 'tin.name');
    expect(word?.parameters).toMatchObject({ measure: 'width', element: 'the product name' });
    expect(
      problemsOf(
        { role: 'front', surface: rectangle(Number(word?.allowed), 90) },
        { name: 'Frankincense' },
      ).filter(({ where }) => where === 'tin.name'),
    ).toEqual([]);
  });

  it('finds room again once the ingredients are on a leaflet', () => {
    const leaflet = { surface: rectangle(74, 52), elements: ['ingredients'], pointer: 'symbol' } as const;
    const surface = round(36);
    expect(problemsOf({ role: 'back', surface })).not.toEqual([]);
    const pieces = must(
      composePieces(
        buildDesign({
          pieces: [...buildDesign().pieces.slice(0, 1), { id: 'base', role: 'back', surface }],
          leaflet,
        }),
        buildWording(),
      ),
    );
    const laid = pieces.map((piece) => must(layoutPiece(piece, printTools)));
    expect(laid.map(({ id }) => id)).toEqual(['lid', 'base', 'leaflet']);
    expect(laid[1]?.items.some(({ element, kind }) => element === 'base.symbol' && kind === 'path')).toBe(
      true,
    );
  });

  it('draws a sand-glass before a date in place of words', () => {
    const drawn = layout({}, { durability: { date: '2027-05-15', sign: 'hourglass' } });
    expect(wordsOf(drawn, 'durability')).toBe('15/05/2027');
    const glass = drawn.items.filter(({ element }) => element === 'tin.hourglass');
    const date = textsOf(drawn).find(({ element }) => element === 'tin.durability');
    expect(glass).toHaveLength(2);
    expect(glass.every((item) => item.kind === 'path' && item.xMm < (date?.xMm ?? 0))).toBe(true);
  });

  it('keeps to the letters that were chosen, and refuses letters that nobody can read', () => {
    const letters = { leastXHeightMm: 1.6, mostXHeightMm: 2 };
    expect(layout({ letters, surface: rectangle(120, 120) }).smallestXHeightMm).toBeGreaterThanOrEqual(1.6);
    expect(problemsOf({ letters: { leastXHeightMm: 0.89 } })).toMatchObject([
      { code: 'label-letters-wrong' },
    ]);
    expect(problemsOf({ letters: { leastXHeightMm: SMALLEST_X_HEIGHT_MM } })).toEqual([]);
  });

  it('makes a code smaller before it refuses it, and names it where even that is too large', () => {
    const code = { kind: 'in-house' } as const;
    const at = (heightMm: number) => ({ role: 'sticker' as const, surface: rectangle(45, heightMm), code });
    expect(layout(at(20)).moduleMm).toBe(0.5);
    expect(layout(at(14)).moduleMm).toBe(0.4);
    // 21 modules and four of white on each side, 0.4 mm each, and a margin of 1 mm: 13.6 mm.
    expect(problemsOf(at(13.6))).toEqual([]);
    expect(problemsOf(at(13.5))).toMatchObject([
      { code: 'label-element-lacks-room', where: 'tin.code', allowed: 13.6, parameters: { lackMm: 0.1 } },
    ]);
  });

  it('prints bars at their nominal width where they fit, at 80 % where not, and never below', () => {
    const code = { kind: 'ean-13', gtin: '9506000134352' } as const;
    // 95 modules, 11 and 7 of white; 22.85 mm at 0.33 mm (GS1 General Specifications, as read in a national size guide).
    const nominal = layout({ surface: rectangle(110, 80), code });
    expect(nominal.moduleMm).toBe(0.33);
    const bars = nominal.items.find((item) => item.kind === 'boxes');
    if (bars?.kind !== 'boxes') throw new Error('no bars');
    expect(edgeOf(bars) - bars.xMm).toBeCloseTo(95 * 0.33, 6);
    expect(Math.min(...bars.boxes.map(([, , , height]) => height))).toBeCloseTo(22.85, 6);
    expect(110 - edgeOf(bars)).toBeGreaterThanOrEqual(7 * 0.33 + INSET_MM - 1e-6);
    const sticker = (widthMm: number, heightMm: number) =>
      ({ role: 'sticker', elements: ['batch'], surface: rectangle(widthMm, heightMm), code }) as const;
    expect(layout(sticker(60, 25)).moduleMm).toBe(0.264);
    expect(problemsOf(sticker(30, 30))[0]).toMatchObject({
      code: 'label-element-lacks-room',
      where: 'tin.code',
    });
  });

  it('refuses a character that the font lacks, in a heading too, and measures that cannot be', () => {
    expect(problemsOf({}, { name: 'Cedar 🌲 butter' })).toMatchObject([
      { code: 'glyph-missing', where: 'tin.name', found: '🌲' },
    ]);
    for (const bad of [0, -1, Number.NaN, Number.POSITIVE_INFINITY, 500])
      expect(problemsOf({ surface: round(bad) })).toMatchObject([
        { code: 'label-surface-wrong', where: 'tin.diameterMm' },
      ]);
    const wrap = { shape: 'wrap', circumferenceMm: 100, heightMm: 40, overlapMm: 26 } as const;
    expect(problemsOf({ surface: wrap })).toMatchObject([
      { code: 'label-surface-wrong', where: 'tin.overlapMm' },
    ]);
  });
});

describe('layoutPiece for the United States', () => {
  const american = (
    surface: Surface,
    design: Partial<LabelDesign> = {},
    role: DesignPiece['role'] = 'front',
  ) => layout({ role, surface }, {}, { market: 'US', ...design });

  // 21 CFR 701.13: bottom 30 % of the principal display panel; type by its area, bands including their upper bound.
  it('puts the net contents into the bottom 30 % of the panel', () => {
    for (const surface of [round(66), rectangle(70, 60), rectangle(50, 90, 3)]) {
      const drawn = american(surface);
      const net = textsOf(drawn).filter(({ element }) => element === 'tin.content');
      expect(wordsOf(drawn, 'content')).toBe('Net Wt. 2.8 oz (80 g)');
      const top = Math.min(...net.map(({ ink }) => ink.top));
      expect(top).toBeGreaterThanOrEqual(heightOf(drawn.size) * 0.7 - 1e-9);
      const others = textsOf(drawn).filter(({ element }) => element !== 'tin.content');
      expect(Math.max(...others.map(({ ink }) => ink.bottom))).toBeLessThan(top);
    }
  });

  // Five square inches are 3225.8 mm2: 63.5 mm by 50.8 mm (2.5 by 2 inches) exactly.
  it('takes the type height by the area of the panel, on both sides of five square inches', () => {
    const heightOn = (surface: Surface): number => american(surface).figureHeightMm ?? 0;
    expect(heightOn(rectangle(63.5, 50.8))).toBeLessThan(3.175);
    expect(heightOn(rectangle(63.5, 50.8))).toBeGreaterThanOrEqual(1.5875);
    expect(heightOn(rectangle(63.6, 50.8))).toBeGreaterThanOrEqual(3.175);
    expect(
      heightOn({ shape: 'wrap', circumferenceMm: 200, heightMm: 50, overlapMm: 8 }),
    ).toBeGreaterThanOrEqual(3.175);
  });

  // 21 CFR 701.3(b): 1/16 inch; 1/32 inch below twelve square inches (7741.92 mm2) for all of the container.
  it('sets ingredients in letters of a sixteenth of an inch, smaller ones only on a small container', () => {
    const letters = (containerSurfaceMm2?: number): number => {
      const drawn = american(
        rectangle(120, 100),
        containerSurfaceMm2 === undefined ? {} : { containerSurfaceMm2 },
        'whole',
      );
      const item = textsOf(drawn).find(
        ({ element, weight }) => element === 'tin.ingredients' && weight === 'regular',
      );
      return (item?.sizeMm ?? 0) * printTools.faces.regular.xHeight;
    };
    expect(letters()).toBeGreaterThanOrEqual(1.5875 - 1e-9);
    expect(letters(7741.92)).toBeGreaterThanOrEqual(1.5875 - 1e-9);
    expect(letters(7741.91)).toBeLessThan(1.5875);
    expect(letters(7741.91)).toBeGreaterThanOrEqual(0.9);
  });

  // 21 CFR 740.2: bold, and not below a sixteenth of an inch however small the container.
  it('sets warnings bold, in letters of a sixteenth of an inch on a small container too', () => {
    const drawn = american(rectangle(120, 100), { containerSurfaceMm2: 1000 }, 'whole');
    const warnings = textsOf(drawn).filter(({ element }) => element === 'tin.precautions');
    expect(warnings.length).toBeGreaterThan(0);
    for (const { weight, sizeMm } of warnings) {
      expect(weight).toBe('bold');
      expect(sizeMm * printTools.faces.regular.xHeight).toBeGreaterThanOrEqual(1.5875 - 1e-9);
    }
    const european = layout({ role: 'whole', surface: rectangle(120, 100) });
    expect(textsOf(european).find(({ element }) => element === 'tin.precautions')?.weight).toBe('regular');
  });
});
