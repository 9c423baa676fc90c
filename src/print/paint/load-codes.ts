import encoder from 'bwip-js/generic';
import type { BarWidths, CodeMaker, QrSquares } from '../layout/index.ts';

/** The encoder of the print room. QR with error correction M (15 %): common practice, no source. */
export const loadCodes = (): CodeMaker => ({ qr: encodeQr, ean13: encodeEan13 });

function encodeQr(content: string): QrSquares | null {
  const drawn = encode('qrcode', content, 'eclevel=M');
  if (drawn === null || !('pixs' in drawn)) return null;
  const { pixs, pixx, pixy } = drawn;
  return Array.from({ length: pixy }, (_, row) =>
    Array.from({ length: pixx }, (__, column) => pixs[row * pixx + column] === 1),
  );
}

function encodeEan13(digits: string): BarWidths | null {
  const drawn = encode('ean13', digits);
  return drawn !== null && 'sbs' in drawn ? drawn.sbs : null;
}

/** The encoder throws at what a symbol cannot hold; such a text is an answer here. Any other mistake stays one. */
function encode(symbol: string, text: string, options = '') {
  try {
    return encoder.raw(symbol, text, options)[0] ?? null;
  } catch (mistake) {
    if (mistake instanceof Error && /^bwipp\.(qrcode|ean13)/.test(mistake.message)) return null;
    throw mistake;
  }
}
