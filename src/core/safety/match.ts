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
 * What several names and numbers of one thing lead to, taken together: every row that one of them tells, and the first
 * doubt that those rows do not answer.
 */
export function joinMatches<Row>(matches: readonly Match<Row>[]): Match<Row> {
  const [only] = matches;
  if (only !== undefined && matches.length === 1) return only;
  const rows = [...new Set(matches.flatMap((match) => match.rows))];
  const doubt = matches.find(
    (match) => match.kind === 'unknown' && match.mayBe.some((row) => !rows.includes(row)),
  );
  return doubt === undefined ? foundRows(rows) : { ...doubt, rows };
}

export const isSameSet = <Row>(left: readonly Row[], right: readonly Row[]): boolean =>
  left.length === right.length && left.every((row) => right.includes(row));
