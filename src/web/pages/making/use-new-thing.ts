import type { Problem } from '../../../core/problem.ts';
import { useWrite } from '../../api/use-write.ts';
import { EMPTY_MATERIAL } from '../materials/material-draft.ts';

/**
 * Something that nobody has named yet: it joins the materials by its name, and as much of it is found on the shelf as is
 * weighed in. Two facts that hold by themselves, should the tablet fall asleep between them.
 */
export function useNewThing() {
  const material = useWrite('saveMaterial');
  const lot = useWrite('countAtOpening');
  async function take(name: string, grams: string): Promise<string | undefined> {
    const saved = await material.write({ body: { details: { ...EMPTY_MATERIAL, name } } });
    if (!saved) return undefined;
    const found = await lot.write({
      body: {
        materialId: saved.id,
        supplierLot: null,
        bestBefore: null,
        grossGrams: grams,
        tareGrams: '0',
        paid: null,
      },
    });
    return found?.id;
  }
  const problems: readonly Problem[] = [...material.problems, ...lot.problems];
  return { take, problems, isBusy: material.isBusy || lot.isBusy };
}
