import type { PlacedImage, PrintDocument } from '../layout/index.ts';
import type { Pdf } from './pdf.ts';

/** What the drawing library makes of a picture; its data is null once it stands in the file. */
export interface KeptImage {
  readonly width: number;
  readonly height: number;
  readonly imgData?: Uint8Array | null;
  obj: { end(chunk?: unknown): void } | null;
  embed(pdf: Pdf): void;
}

export type KeptImages = ReadonlyMap<Uint8Array, KeptImage>;

/** Every picture once, one after the other: two that are unpacked at the same time would stand in the file in either order. */
export async function keepImages(pdf: Pdf, document: PrintDocument): Promise<KeptImages> {
  const placed = document.pages.flatMap(({ items }) =>
    items.filter((item): item is PlacedImage => item.kind === 'image'),
  );
  const images = new Map<Uint8Array, KeptImage>();
  for (const bytes of new Set(placed.map((item) => item.bytes)))
    images.set(bytes, await keepImage(pdf, bytes));
  return images;
}

async function keepImage(pdf: Pdf, bytes: Uint8Array): Promise<KeptImage> {
  const image = openImage(pdf, bytes);
  image.embed(pdf);
  const { obj } = image;
  if (obj !== null && image.imgData) {
    await new Promise<void>((resolve) => {
      const end = obj.end.bind(obj);
      obj.end = (chunk) => {
        end(chunk);
        resolve();
      };
    });
  }
  return image;
}

/** The types of the drawing library leave this call out. */
const openImage = (pdf: Pdf, bytes: Uint8Array): KeptImage =>
  (pdf as unknown as { openImage(bytes: Uint8Array): KeptImage }).openImage(bytes);
