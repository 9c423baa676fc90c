/** What a code of the workshop's own holds: lot and date, a blank between, for whoever has the book. Common practice, no source. */
export const buildInHouseCode = (lot: string, date: string | null): string =>
  date === null ? lot : `${lot} ${date}`;
