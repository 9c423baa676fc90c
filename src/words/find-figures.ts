/** A parameter with its unit behind it: `{grams} g`, `{most} %`, `{have}{unit, select, g { g} ...}`. */
const MEASURED = /\{([A-Za-z]+)\}(?=[ \u00a0](?:g\b|%)|[ \u00a0]?\{unit\b)/g;
/** An amount in whatever unit its thing is kept in. */
const AMOUNT = /\{([A-Za-z]+)\}(?=[ \u00a0]?\{unit\b)/g;
/** Numbers that name something are no figures: order 1042 is not order 1 042. */
const NAMES = new Set(['number', 'revision', 'year', 'entry', 'position', 'port']);

const known = new Map<string, ReadonlySet<string>>();

/** Which parameters of a text are measured figures, so that their thousands are kept apart. */
export function findMeasured(text: string): ReadonlySet<string> {
  const found = known.get(text) ?? new Set([...text.matchAll(MEASURED)].map((match) => match[1] ?? ''));
  known.set(text, found);
  return found;
}

/** Which parameters of a text are amounts of something that is weighed or counted. */
export const findAmounts = (text: string): readonly string[] =>
  [...text.matchAll(AMOUNT)].map((match) => match[1] ?? '');

/** Has the plain counts of a text said as figures too: `{tins}` becomes `{tins, number}` where a number is given. */
export const markCounts = (text: string, words: Readonly<Record<string, string | number>>): string =>
  Object.entries(words).reduce(
    (marked, [name, value]) =>
      typeof value === 'number' && !NAMES.has(name) && marked.includes(`{${name}}`)
        ? marked.replaceAll(`{${name}}`, `{${name}, number}`)
        : marked,
    text,
  );
