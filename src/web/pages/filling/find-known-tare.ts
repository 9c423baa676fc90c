interface Weighed {
  readonly id: string;
  readonly details: { readonly tareGrams: string | null };
}

/** What a tin is known to weigh empty: the workshop takes it where no other weight is given. */
export const findKnownTare = (tinId: string | undefined, materials: readonly Weighed[]): string | null =>
  materials.find(({ id }) => id === tinId)?.details.tareGrams ?? null;
