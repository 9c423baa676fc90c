import { fieldWords } from './fields.en-gb.ts';

const FIELD_PATH = /^[a-z][A-Za-z0-9]*(\[\d+\])*(\.[A-Za-z][A-Za-z0-9]*(\[\d+\])*)*$/;

/** Boxes that hold fields and say nothing themselves. */
const SILENT = new Set([
  'details',
  'stamp',
  'wish',
  'size',
  'scale',
  'retained',
  'settingHours',
  'deviation',
  'weighed',
]);

/** A label stands with a capital on its page; within a sentence only what is always written so keeps it. */
const lowered = (label: string): string =>
  label.replace(/^[A-Z](?=[a-z ])/, (letter) => letter.toLowerCase());

/** A label that asks something is quoted: a question has no place within a sentence. */
const quoted = (label: string): string => (label.endsWith('?') ? `\u201c${label}\u201d` : label);

const singular = (plural: string): string =>
  plural.endsWith('ies') ? `${plural.slice(0, -3)}y` : plural.replace(/([^s])s$/, '$1');

/** For inputs of the calculations, which only the command line names: `leastPercent` becomes `least percent`. */
const inWords = (name: string): string =>
  name
    .replace(/(?<=[a-z])Id$/, '')
    .replace(/(?<=[a-z0-9])(?=[A-Z])/g, ' ')
    .toLowerCase();

const withoutIndexes = (part: string): string => part.replace(/\[\d+\]/g, '[]');

/** The words of a field, by what it stands in where that matters; undefined where the contract has no such field. */
export function wordsOfField(part: string, box: string | undefined): string | undefined {
  const name = withoutIndexes(part);
  return fieldWords[`${withoutIndexes(box ?? '')}.${name}`] ?? fieldWords[name];
}

function sayPart(part: string, box: string | undefined): string {
  const indexes = [...part.matchAll(/\[(\d+)\]/g)].map((found) => Number(found[1]) + 1);
  const name = part.replace(/\[.*$/, '');
  const known = wordsOfField(part, box) ?? (indexes.length > 0 ? singular(inWords(name)) : inWords(name));
  return [quoted(known) === known ? lowered(known) : quoted(known), indexes.join(', ')]
    .filter((text) => text !== '')
    .join(' ');
}

/**
 * A field's path as it is called on its page: `lines[3].grams` becomes `line 4, grams`, `details.signedOn` becomes
 * `signed on`. Names of things stay as they are.
 */
export function sayWhere(where: string): string {
  if (!FIELD_PATH.test(where)) return quoted(where);
  const parts = where.split('.');
  return parts
    .map((part, place) => ({ part, box: parts[place - 1] }))
    .filter(({ part }, place) => place === parts.length - 1 || !SILENT.has(part))
    .map(({ part, box }) => sayPart(part, box))
    .join(', ');
}
