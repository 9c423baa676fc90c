interface Place {
  readonly id: string;
  readonly name: string;
}

/** The names of places, in the order of the workshop's list of them. */
export const namePlaces = (placeIds: readonly string[], places: readonly Place[]): string =>
  places
    .filter(({ id }) => placeIds.includes(id))
    .map(({ name }) => name)
    .join(', ');
