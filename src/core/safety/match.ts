export type MatchDoubt =
  /** Several materials share the CAS number, and nothing else tells them apart. */
  | 'shared-cas'
  /** Several materials go by the name. */
  | 'ambiguous-name'
  /** The name says another plant part or process than the fields do. */
  | 'name-contradicts-fields'
  /** The shared number covers a prohibited material, and no row names this kind of it. */
  | 'may-be-prohibited';

export type Match<Row> =
  | { readonly kind: 'rows'; readonly rows: readonly Row[] }
  | {
      readonly kind: 'unknown';
      readonly doubt: MatchDoubt;
      /** Rows that it belongs to whatever settles the doubt: another of its names or numbers told so. */
      readonly rows: readonly Row[];
      /** Rows that it may belong to. */
      readonly mayBe: readonly Row[];
      /** What would settle it: plantPart, process, form, name. */
      readonly tellApartBy: readonly string[];
    };

export const foundRows = <Row>(rows: readonly Row[]): Match<Row> => ({ kind: 'rows', rows });

export const doubted = <Row>(
  doubt: MatchDoubt,
  mayBe: readonly Row[],
  tellApartBy: readonly string[] = [],
): Match<Row> => ({ kind: 'unknown', doubt, rows: [], mayBe, tellApartBy });

/** Rows that a match may lead to, doubtful ones too. */
export const possibleRows = <Row>(match: Match<Row>): readonly Row[] =>
  match.kind === 'rows' ? match.rows : [...new Set([...match.rows, ...match.mayBe])];

/**
 * What several names and numbers of one thing lead to, taken together: every row that one of them tells, and every
 * doubt that those rows do not answer, as one: whoever settles it has seen all that it may be.
 */
export function joinMatches<Row>(matches: readonly Match<Row>[]): Match<Row> {
  const [only] = matches;
  if (only !== undefined && matches.length === 1) return only;
  const rows = [...new Set(matches.flatMap((match) => match.rows))];
  const doubts = matches.filter(isDoubt).filter(({ mayBe }) => mayBe.some((row) => !rows.includes(row)));
  const [gravest] = [...doubts].sort((one, other) => gravity(other.doubt) - gravity(one.doubt));
  if (gravest === undefined) return foundRows(rows);
  const join = <Part>(of: (doubt: Doubted<Row>) => readonly Part[]): Part[] => [
    ...new Set(doubts.flatMap(of)),
  ];
  return { ...gravest, rows, mayBe: join(({ mayBe }) => mayBe), tellApartBy: join((one) => one.tellApartBy) };
}

type Doubted<Row> = Match<Row> & { readonly kind: 'unknown' };

const isDoubt = <Row>(match: Match<Row>): match is Doubted<Row> => match.kind === 'unknown';

/** Which of several doubts the question is asked by. */
const gravity = (doubt: MatchDoubt): number => (doubt === 'may-be-prohibited' ? 1 : 0);

export const isSameSet = <Row>(left: readonly Row[], right: readonly Row[]): boolean =>
  left.length === right.length && left.every((row) => right.includes(row));
