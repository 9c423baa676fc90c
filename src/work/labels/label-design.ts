import { labels, type orders } from '../../contract/index.ts';
import { findLabelDesign, type Reader } from '../../storage/index.ts';

type Face = orders.ProductDetails['faceMm'];

const surfaceOf = ({ shape, width, height }: Face): labels.LabelSurface =>
  shape === 'round'
    ? { shape, diameterMm: Math.min(width, height) }
    : { shape, widthMm: width, heightMm: height, cornerRadiusMm: 0 };

/** What a product has that nobody has designed labels for: a front and a back, as it was entered. */
export const plainDesign = ({ faceMm, backMm }: orders.ProductDetails): labels.LabelDesignDetails =>
  labels.labelDesignDetails.parse({
    pieces: [
      { id: 'front', role: 'front', surface: surfaceOf(faceMm) },
      { id: 'back', role: 'back', surface: surfaceOf(backMm) },
    ],
  });

export const readLabelDesign = (json: string): labels.LabelDesignDetails =>
  labels.labelDesignDetails.parse(JSON.parse(json));

export async function designOf(
  db: Reader,
  productId: string,
  details: orders.ProductDetails,
): Promise<labels.LabelDesignDetails> {
  const row = await findLabelDesign(db, productId);
  return row ? readLabelDesign(row.details) : plainDesign(details);
}
