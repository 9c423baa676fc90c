const GREEK: Readonly<Record<string, string>> = { α: 'alpha', β: 'beta', γ: 'gamma', δ: 'delta' };

/** One spelling for names that differ in case, spaces, blanks round a slash, or a Greek letter. */
export const normaliseName = (name: string): string =>
  name
    .trim()
    .toLowerCase()
    .replace(/[αβγδ]/g, (letter) => GREEK[letter] ?? letter)
    .replace(/\s*\/\s*/g, '/')
    .replace(/\s+/g, ' ');

/** Bud counts as flower, kernel as seed, twig and stem as wood (vocabulary of the reference tables). */
const PARTS: Readonly<Record<string, string>> = {
  flower: 'flower',
  bud: 'flower',
  leaf: 'leaf',
  needle: 'leaf',
  peel: 'peel',
  seed: 'seed',
  kernel: 'seed',
  root: 'root',
  wood: 'wood',
  twig: 'wood',
  stem: 'wood',
  bark: 'bark',
  herb: 'herb',
  fruit: 'fruit',
  berry: 'fruit',
  resin: 'resin',
};

const PROCESSES: readonly (readonly [RegExp, string])[] = [
  [/\bfcf\b|furocoumarin[- ]free|bergapten[- ]free/, 'furocoumarin-free'],
  [/\bdistilled\b/, 'distilled'],
  [/\bexpressed\b|\bcold[- ]pressed\b/, 'expressed'],
  [/\babsolute\b/, 'absolute'],
  [/\bconcrete\b/, 'concrete'],
  [/\bco2\b/, 'co2'],
  [/\brectified\b/, 'rectified'],
];

export interface NameHints {
  readonly plantPart?: string;
  readonly process?: string;
}

/** The plant part and process that a name says itself, where it says exactly one: "Rosa Canina Seed Oil" is seed. */
export function readNameHints(normalised: string): NameHints {
  const parts = new Set(normalised.split(/[^a-z0-9]+/).flatMap((word) => PARTS[word] ?? []));
  const processes = PROCESSES.filter(([pattern]) => pattern.test(normalised)).map(([, process]) => process);
  const [plantPart] = parts;
  const [process] = processes;
  return {
    ...(parts.size === 1 && plantPart !== undefined && { plantPart }),
    ...(processes.length === 1 && process !== undefined && { process }),
  };
}
