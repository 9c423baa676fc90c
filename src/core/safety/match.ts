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
): Match<Row> => ({ kind: 'unknown', doubt, mayBe, tellApartBy });

export const isSameSet = <Row>(left: readonly Row[], right: readonly Row[]): boolean =>
  left.length === right.length && left.every((row) => right.includes(row));
