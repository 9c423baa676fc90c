import { boundSafetyTables } from '../catalogue/index.ts';
import { matchRows, normaliseName, type Substance } from '../core/safety/index.ts';
import { essentialOils, inciNames } from '../reference/index.ts';

let heard: ReadonlySet<string> | undefined;

/** Names and CAS numbers that the tables print without a rule: constituents of oils that are free, plain label names. */
function heardOf(): ReadonlySet<string> {
  heard ??= new Set([
    ...essentialOils.flatMap(({ constituents }) =>
      constituents.flatMap(({ name, cas }) => [normaliseName(name), ...(cas ? [cas] : [])]),
    ),
    ...inciNames.flatMap(({ name, inciEu, cas }) => [normaliseName(name), normaliseName(inciEu), ...cas]),
  ]);
  return heard;
}

/** Whether any of the tables knows it, with a rule or without: only then does "no rule" say anything. */
export function isHeardOf(substance: Substance): boolean {
  const known = heardOf();
  const { name, cas, alsoCas = [] } = substance;
  const isPrinted = [normaliseName(name), ...(cas ? [cas] : []), ...alsoCas].some((word) => known.has(word));
  return (
    isPrinted ||
    Object.values(matchRows(boundSafetyTables(), substance)).some(
      (match) => match.kind === 'unknown' || match.rows.length > 0,
    )
  );
}
