/** As they stand in a sentence: "not in it: peanut or bee products". */
const NAMES = {
  'tree-nut': 'tree nut',
  peanut: 'peanut',
  wheat: 'wheat',
  soya: 'soya',
  sesame: 'sesame',
  bee: 'bee products',
  milk: 'milk',
  animal: 'anything from an animal',
  palm: 'palm',
  'daisy-family': 'plants of the daisy family',
} as const;

interface Origin {
  readonly flag: keyof typeof NAMES;
  readonly verdict: 'contains' | 'free' | 'unknown';
  readonly materials: readonly string[];
  /** Of those in it, the ones that only their name tells it of. */
  readonly byName: readonly string[];
}

const nameOf = ({ flag }: Origin): string => NAMES[flag];
const listOf = new Intl.ListFormat('en-GB', { type: 'conjunction' });
const altOf = new Intl.ListFormat('en-GB', { type: 'disjunction' });

const withVerdict = (origins: readonly Origin[], verdict: Origin['verdict']): readonly Origin[] =>
  origins.filter((row) => row.verdict === verdict);

/** Tree nut (Shea butter, Almond oil by its name), from bees (Beeswax). */
const withMaterials = (rows: readonly Origin[]): string =>
  rows
    .map((row) => {
      const names = row.materials.map((name) => (row.byName.includes(name) ? `${name} by its name` : name));
      return `${nameOf(row)} (${names.join(', ')})`;
    })
    .join('; ');

/** Of which nobody has said, together. */
function sayOpen(open: readonly Origin[]): string {
  if (open.length === 0) return '';
  const materials = [...new Set(open.flatMap((row) => row.materials))];
  return `Not known: ${listOf.format(open.map(nameOf))}, since nobody has said what ${listOf.format(materials)} ${materials.length === 1 ? 'comes' : 'come'} from.`;
}

/** What people ask of a product: may I use it? */
export const answerWords = {
  title: 'Has it got nuts in?',
  ofBatch: (batch: string) => `By the lots that went into ${batch}.`,
  asMade: 'As it is made now, by what the suppliers’ papers say of its materials.',
  verdicts: { contains: 'in it', free: 'not in it', unknown: 'not known' },
  /** First what is in it, then what is not, then what nobody has said. */
  sentence(origins: readonly Origin[]): string {
    const [has, free, open] = (['contains', 'free', 'unknown'] as const).map((each) =>
      withVerdict(origins, each),
    ) as [readonly Origin[], readonly Origin[], readonly Origin[]];
    const parts = [
      has.length > 0 ? `In it: ${withMaterials(has)}.` : '',
      free.length > 0 ? `Not in it: ${altOf.format(free.map(nameOf))}.` : '',
      sayOpen(open),
    ];
    return parts.filter((part) => part !== '').join(' ');
  },
  traces: 'Traces of what else is made at the same bench cannot be ruled out.',
  ingredients: (market: string) => `Ingredients, ${market}`,
  asPrinted: (day: string) => `As printed on its label on ${day}.`,
  printedOther: (day: string, onlyOnLabel: readonly string[], onlyNow: readonly string[]) =>
    [
      `This stands on the tins, as printed on ${day}; by what is known today the list would be another.`,
      onlyOnLabel.length > 0 ? `Only on the label: ${listOf.format(onlyOnLabel)}.` : '',
      onlyNow.length > 0 ? `Not on the label: ${listOf.format(onlyNow)}.` : '',
      onlyOnLabel.length + onlyNow.length === 0 ? 'The order differs.' : '',
    ]
      .filter((part) => part !== '')
      .join(' '),
  printedNotKept: (day: string) =>
    `The label printed on ${day} says something else than this list, and its words were not kept: read the tin.`,
  nothingPrinted: 'No label of this batch was printed here: the list as it would be today.',
  /** After a copied list: what the label does not say, and whoever asks should know. */
  alsoNow: (names: readonly string[]) => `By newer papers also: ${names.join(', ')}`,
  copyIngredients: 'Copy the ingredients',
  copyAll: 'Copy ingredients and answer',
  copied: 'Copied.',
  notCopied: 'The browser did not let it be copied: select the text and copy it by hand.',
  mend: 'Say what a material comes from',
  /** For a shop page or a message. */
  text(name: string, batch: string | null, ingredients: string, origins: readonly Origin[]): string {
    return [
      batch === null ? name : `${name}, batch ${batch}`,
      `Ingredients: ${ingredients}`,
      answerWords.sentence(origins),
      answerWords.traces,
    ].join('\n');
  },
};
