import { printWords } from '../../words/index.ts';

/** Whose paper it is and which, on every page. */
export const footerOf = (workshopName: string, what: string): string =>
  printWords.paper.footer(workshopName, what);
