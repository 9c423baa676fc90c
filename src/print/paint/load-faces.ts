import { create, type Font } from 'fontkit';
import type { Face, Faces, InkExtent, Weight } from '../layout/index.ts';
import { readFontFile } from './font-files.ts';

let loaded: Faces | undefined;

/** The metrics of the fonts that the painter embeds, read once. */
export function loadFaces(): Faces {
  loaded ??= { regular: loadFace('regular'), semibold: loadFace('semibold'), bold: loadFace('bold') };
  return loaded;
}

function loadFace(weight: Weight): Face {
  const font = create(readFontFile(weight));
  const advances = new Map<string, number>();
  const inks = new Map<string, InkExtent | null>();
  return {
    xHeight: font.xHeight / font.unitsPerEm,
    advanceOf: (text) =>
      segmentsOf(text).reduce(
        (sum, segment) => sum + remember(advances, segment, () => advance(font, segment)),
        0,
      ),
    inkOf: (text) => remember(inks, text, () => inkOf(font, text)),
    draws: (character) => draws(font, character),
  };
}

function remember<T>(known: Map<string, T>, key: string, work: () => T): T {
  const value = known.get(key);
  if (value !== undefined || known.has(key)) return value as T;
  const worked = work();
  known.set(key, worked);
  return worked;
}

/** pdfkit shapes a text word by word, each with the blank after it; measuring must part it in the same places. */
const segmentsOf = (text: string): string[] => text.match(/[^ \t]*[ \t]|[^ \t]+/g) ?? [];

const advance = (font: Font, text: string): number => font.layout(text).advanceWidth / font.unitsPerEm;

function inkOf(font: Font, text: string): InkExtent | null {
  let x = 0;
  const boxes: InkExtent[] = [];
  for (const segment of segmentsOf(text)) {
    const run = font.layout(segment);
    run.glyphs.forEach((glyph, index) => {
      const position = run.positions[index];
      if (position === undefined) return;
      const { minX, maxX, minY, maxY } = glyph.bbox;
      const { xOffset, yOffset, xAdvance } = position;
      if (maxX > minX) {
        boxes.push({
          left: x + xOffset + minX,
          right: x + xOffset + maxX,
          bottom: yOffset + minY,
          top: yOffset + maxY,
        });
      }
      x += xAdvance;
    });
  }
  return boxes.length === 0 ? null : unionInEms(boxes, font.unitsPerEm);
}

const unionInEms = (boxes: readonly InkExtent[], unitsPerEm: number): InkExtent => ({
  left: Math.min(...boxes.map(({ left }) => left)) / unitsPerEm,
  right: Math.max(...boxes.map(({ right }) => right)) / unitsPerEm,
  bottom: Math.min(...boxes.map(({ bottom }) => bottom)) / unitsPerEm,
  top: Math.max(...boxes.map(({ top }) => top)) / unitsPerEm,
});

/** A glyph without ink counts only for a blank (Unicode category Zs): anything else would print as nothing. */
function draws(font: Font, character: string): boolean {
  const codePoint = character.codePointAt(0);
  if (codePoint === undefined || !font.hasGlyphForCodePoint(codePoint)) return false;
  const glyph = font.glyphForCodePoint(codePoint);
  const isBlank = /^\p{Zs}$/u.test(character) && glyph.advanceWidth > 0;
  return isBlank || glyph.bbox.maxX > glyph.bbox.minX;
}
