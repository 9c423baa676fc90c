import { type PlacedText, toneColour, type Weight } from '../layout/index.ts';
import { type Pdf, points } from './pdf.ts';

/** What of the drawing library is needed to write text by hand; its types leave it out. */
interface SetFont {
  readonly id: string;
  ref(): unknown;
  encode(text: string): readonly [readonly string[], readonly GlyphPosition[]];
}

interface GlyphPosition {
  readonly xAdvance: number;
  readonly advanceWidth: number;
  readonly xOffset: number;
  readonly yOffset: number;
}

/** Glyphs of a text with their kerning, in the font's own numbers: the same in every size and place. */
export type KeptTexts = Map<string, string | null>;

/**
 * A text as one TJ operator (ISO 32000-1, 9.4.3). The library shapes and measures a text anew each time it is drawn; a sheet of
 * labels draws the same few texts hundreds of times, so what it would write is kept.
 */
export function paintText(pdf: Pdf, item: PlacedText, kept: KeptTexts): void {
  const text = item.hasSpaceAfter ? `${item.text} ` : item.text;
  pdf.font(item.weight).fillColor(toneColour[item.tone]);
  const font = fontOf(pdf);
  pdf.page.fonts[font.id] ??= font.ref();
  const [x, y, size] = [points(item.xMm), points(item.baselineMm), points(item.sizeMm)].map(short);
  const glyphs = keptGlyphs(font, item.weight, text, kept);
  if (glyphs === null) paintShaped(pdf, item, text);
  // The page is drawn from its top downwards; letters are turned back up.
  else pdf.addContent(`BT\n/${font.id} ${size} Tf\n1 0 0 -1 ${x} ${y} Tm\n${glyphs} TJ\nET`);
}

const fontOf = (pdf: Pdf): SetFont => (pdf as unknown as { readonly _font: SetFont })._font;

function keptGlyphs(font: SetFont, weight: Weight, text: string, kept: KeptTexts): string | null {
  const key = `${weight} ${text}`;
  const known = kept.get(key);
  if (known !== undefined) return known;
  const glyphs = encodeText(font, text);
  kept.set(key, glyphs);
  return glyphs;
}

/** Marks that are moved against their letter, such as a macron over an x, are left to the library. */
function paintShaped(pdf: Pdf, item: PlacedText, text: string): void {
  pdf.fontSize(points(item.sizeMm));
  pdf.text(text, points(item.xMm), points(item.baselineMm), { lineBreak: false, baseline: 'alphabetic' });
}

function encodeText(font: SetFont, text: string): string | null {
  const [codes, positions] = font.encode(text);
  const written: string[] = [];
  let run = '';
  if (positions.some(({ xOffset, yOffset }) => xOffset !== 0 || yOffset !== 0)) return null;
  codes.forEach((code, index) => {
    const { xAdvance, advanceWidth } = positions[index] ?? FLAT;
    run += code;
    if (xAdvance === advanceWidth) return;
    written.push(`<${run}> ${short(advanceWidth - xAdvance)}`);
    run = '';
  });
  return `[${[...written, ...(run === '' ? [] : [`<${run}>`])].join(' ')}]`;
}

const FLAT: GlyphPosition = { xAdvance: 0, advanceWidth: 0, xOffset: 0, yOffset: 0 };

/** A ten-thousandth of a point: finer than any printer. */
const short = (value: number): number => Math.round(value * 1e4) / 1e4;
