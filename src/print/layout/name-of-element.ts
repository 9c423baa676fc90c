import { printWords } from '../../words/index.ts';

/** `back.otherLines[1]` is "another line on the back" to a person. */
export function nameOfElement(where: string): string {
  const field = where.replace(/^(front|back)\./, '').replace(/\[\d+\]$/, '');
  return isNamed(field) ? printWords.label.elements[field] : where;
}

const isNamed = (field: string): field is keyof typeof printWords.label.elements =>
  Object.hasOwn(printWords.label.elements, field);
