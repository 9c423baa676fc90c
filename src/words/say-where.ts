const FIELD_PATH = /^[a-z][A-Za-z0-9]*(\[\d+\])*(\.[A-Za-z][A-Za-z0-9]*(\[\d+\])*)*$/;

/** Fields whose plain name is not what a person calls them. */
const CALLED: Readonly<Record<string, string>> = {
  input: 'what was sent',
  body: 'what was sent',
  by: 'who did it',
  at: 'when it was done',
  id: 'the number it is known by',
  like: 'what to look for',
  cas: 'CAS number',
  inciEu: 'label name for the EU',
  inciUs: 'label name for the US',
  wantedBy: 'the day it is wanted by',
  placedOn: 'the day it was ordered',
};
/** Boxes that hold fields and say nothing themselves. */
const SILENT = new Set(['details', 'stamp', 'wish', 'size']);

const singular = (plural: string): string =>
  plural.endsWith('ies') ? `${plural.slice(0, -3)}y` : plural.replace(/([^s])s$/, '$1');

/** `leastPercent` becomes `least percent`, `formulaId` becomes `formula`. */
const inWords = (name: string): string =>
  name
    .replace(/(?<=[a-z])Id$/, '')
    .replace(/(?<=[a-z0-9])(?=[A-Z])/g, ' ')
    .toLowerCase();

function sayPart(part: string): string {
  const [name = '', ...indexes] = part.split(/[[\]]+/).filter((piece) => piece !== '');
  if (indexes.length === 0) return CALLED[name] ?? inWords(name);
  const counted = indexes.map((index) => Number(index) + 1);
  return `${singular(inWords(name))} ${counted.join(', ')}`;
}

/** A field's path as a person would say it: `lines[3].grams` becomes `line 4, grams`. Names of things stay as they are. */
export function sayWhere(where: string): string {
  if (!FIELD_PATH.test(where)) return where;
  const parts = where.split('.');
  const spoken = parts.filter((part, place) => place === parts.length - 1 || !SILENT.has(part));
  return spoken.map(sayPart).join(', ');
}
