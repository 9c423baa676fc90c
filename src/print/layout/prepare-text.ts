/**
 * Text as it will be set: composed letters (NFC, since the font has e-acute as one glyph), plain line ends, one kind of blank.
 * Word joiner and byte-order mark have no ink by definition and go; everything else stays, so that a missing glyph is found.
 */
export const prepareText = (text: string): string =>
  text
    .normalize('NFC')
    .replace(/\r\n?|[\u2028\u2029]/g, '\n')
    .replace(/[\u2060\ufeff]/g, '')
    .replace(/[ \t]+/g, ' ')
    .replace(/ ?\n ?/g, '\n')
    .trim();
