/** The few calls of fontkit 2 that the metrics need; the package brings no types of its own. */
declare module 'fontkit' {
  interface BoundingBox {
    readonly minX: number;
    readonly minY: number;
    readonly maxX: number;
    readonly maxY: number;
  }
  interface Glyph {
    readonly id: number;
    readonly advanceWidth: number;
    readonly bbox: BoundingBox;
  }
  interface GlyphRun {
    readonly glyphs: readonly Glyph[];
    readonly positions: readonly {
      readonly xAdvance: number;
      readonly xOffset: number;
      readonly yOffset: number;
    }[];
    readonly advanceWidth: number;
  }
  export interface Font {
    readonly unitsPerEm: number;
    readonly xHeight: number;
    layout(text: string): GlyphRun;
    hasGlyphForCodePoint(codePoint: number): boolean;
    glyphForCodePoint(codePoint: number): Glyph;
  }
  export function create(buffer: Uint8Array): Font;
}
