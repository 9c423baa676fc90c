import { LABEL_ELEMENTS, type LabelElementKey } from './label-design.ts';
import type { SurfaceRole } from './surface.ts';

/** What stands on a piece unless the design says otherwise. Common practice, no source: the law asks only that it stands there. */
export const ELEMENTS_OF_ROLE: Readonly<Record<SurfaceRole, readonly LabelElementKey[]>> = {
  front: ['brand', 'name', 'function', 'content'],
  back: ['ingredients', 'precautions', 'other', 'durability', 'opened', 'batch', 'origin', 'responsible'],
  whole: LABEL_ELEMENTS,
  sticker: ['batch', 'durability'],
  leaflet: ['name', 'ingredients', 'precautions', 'batch'],
};
