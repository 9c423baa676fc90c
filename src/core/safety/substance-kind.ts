import type { Recognised } from './row-index.ts';

/** What tells materials of one plant, or of one CAS number, apart. */
export interface SubstanceKind {
  readonly plantPart?: string | undefined;
  readonly process?: string | undefined;
  readonly origin?: 'natural' | 'added' | undefined;
}

/** Parts that exclude each other. A fruit oil of a citrus is its peel oil, and a herb has leaves and flowers. */
const APART = new Set(['flower', 'leaf', 'peel', 'seed', 'root', 'wood', 'bark', 'resin']);

export function areApart(left: SubstanceKind, right: SubstanceKind): boolean {
  const partsApart =
    left.plantPart !== undefined &&
    right.plantPart !== undefined &&
    left.plantPart !== right.plantPart &&
    APART.has(left.plantPart) &&
    APART.has(right.plantPart);
  const processApart =
    left.process !== undefined && right.process !== undefined && left.process !== right.process;
  return partsApart || processApart;
}

const allows = (condition: readonly string[] | undefined, value: string | undefined): boolean =>
  condition === undefined || condition.length === 0 || value === undefined || condition.includes(value);

/** A value that is not told contradicts nothing. */
export const rowsAllowing = <Row>(candidates: readonly Recognised<Row>[], kind: SubstanceKind): Row[] =>
  candidates
    .filter((row) => allows(row.plantPart, kind.plantPart) && allows(row.process, kind.process))
    .filter(({ origin }) => allows(origin === undefined ? undefined : [origin], kind.origin))
    .map(({ row }) => row);
