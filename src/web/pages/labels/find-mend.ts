/** Where what a label lacks is mended, and what is to be done there. */
export type MendAt = 'product' | 'workshop' | 'materials' | 'check';

interface Lack {
  readonly element: string | null;
  readonly says: { readonly code: string };
}

const OF_THE_WORKSHOP: ReadonlySet<string | null> = new Set([
  'responsible-person',
  'contact',
  'country-of-origin',
]);

/** Names of ingredients are the materials'; what is undecided or cannot be said at all stands in the formula's check. */
export function findMend({ element, says }: Lack): MendAt {
  if (OF_THE_WORKSHOP.has(element)) return 'workshop';
  if (says.code === 'label-name-unknown' || says.code === 'label-name-of-several') return 'materials';
  return element === 'ingredients' || element === null ? 'check' : 'product';
}
