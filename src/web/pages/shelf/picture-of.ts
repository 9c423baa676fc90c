import type { PictureKind } from '../../parts/tub-shapes.ts';
import type { ShelfItem } from './shelf-item.ts';

/** What an item stands there as: what is weighed in a tub, what is counted as itself. */
export function pictureOf({
  group,
  packagingKind,
  unit,
}: Pick<ShelfItem, 'group' | 'packagingKind' | 'unit'>): PictureKind {
  if (group === 'product') return 'filled-tin';
  if (packagingKind === 'tin' || packagingKind === 'lid' || packagingKind === 'label') return packagingKind;
  return unit === 'pieces' ? 'box' : 'tub';
}
