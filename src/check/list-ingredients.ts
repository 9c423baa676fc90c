import type { Market } from '../contract/index.ts';
import type { LabelIngredient } from '../core/label/index.ts';
import type { MaterialDetails, OpenedRevision } from './checked.ts';

type Role = MaterialDetails['role'] | undefined;

/** Colourants stand last, and what scents may stand together; other roles change nothing on a label. */
const isListedApart = (role: Role): role is 'colourant' | 'fragrance' =>
  role === 'colourant' || role === 'fragrance';

/** Every material of the formula as a label of this market names it; `name` '' where nobody knows the name. */
export const listIngredients = (
  { expanded, materials }: Pick<OpenedRevision, 'expanded' | 'materials'>,
  market: Market,
): LabelIngredient[] =>
  expanded.materials.map(({ materialId, percent }) => {
    const material = materials.get(materialId);
    return {
      name: (market === 'US' ? material?.inciUs : material?.inciEu) ?? '',
      percent,
      materialName: material?.name ?? '',
      ...(isListedApart(material?.role) && { role: material?.role }),
      ...(material?.isNano && { isNano: true }),
    };
  });
