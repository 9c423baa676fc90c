/** A paper may print several numbers in one field. */
export const readCasNumbers = (text: string): string[] =>
  text.split(/[\s,;/]+/).filter((number) => number !== '');
