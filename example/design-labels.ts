import type { BenchHand } from './bench-hand.ts';

/** Stickers of 46 by 20 mm, forty-eight on a sheet of A4. Invented. */
const STICKERS = {
  name: 'Stickers 46 × 20',
  geometry: {
    pageWidthMm: 210,
    pageHeightMm: 297,
    columns: 4,
    rows: 12,
    leftMm: 8.5,
    topMm: 14,
    pitchAcrossMm: 49,
    pitchDownMm: 22.5,
    label: { shape: 'rectangle' as const, widthMm: 46, heightMm: 20, cornerRadiusMm: 2 },
  },
};

/** One product has a whole label on its lid, and a sticker with batch, date and code under its tin. */
export async function designLabels(hand: BenchHand, productId: string): Promise<void> {
  const sheet = await hand.write('saveLabelSheet', { details: STICKERS });
  await hand.write(
    'saveLabelDesign',
    {
      version: null,
      details: {
        pieces: [
          { id: 'whole', role: 'whole', surface: { shape: 'round', diameterMm: 62 } },
          {
            id: 'sticker',
            role: 'sticker',
            surface: { shape: 'rectangle', widthMm: 44, heightMm: 18 },
            code: 'in-house',
            sheetId: sheet.id,
          },
        ],
        languages: ['en'],
        spare: 1,
      },
    },
    { id: productId },
  );
}
