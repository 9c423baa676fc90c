import type { KnownReport } from '../../check/index.ts';
import type { Market } from '../../contract/index.ts';

export interface Outweighed {
  readonly by: string;
  readonly formula: string;
  readonly markets: Market[];
}

/**
 * Where a report that was signed later counts instead of this one: for the same formula, in these markets, for every use
 * of this one and for every product that it names. Of two that cover the same the newest is asked (check/find-report).
 */
export function listOutweighed(
  { row, details }: KnownReport,
  reports: readonly KnownReport[],
  names: ReadonlyMap<string, string>,
  today: string,
): Outweighed[] {
  const newer = reports
    .filter((other) => other.row.id !== row.id && other.details.signedOn <= today)
    .filter((other) => other.details.signedOn > details.signedOn && coversAllOf(other.details, details))
    .sort((one, other) => other.details.signedOn.localeCompare(one.details.signedOn));
  return coveredBy(details).flatMap((formulaId) => {
    const left = new Set(details.markets);
    return newer
      .filter((other) => coveredBy(other.details).includes(formulaId))
      .flatMap((other) => {
        const markets = other.details.markets.filter((market) => left.delete(market));
        return markets.length === 0
          ? []
          : [{ by: other.details.reference, formula: names.get(formulaId) ?? '', markets }];
      });
  });
}

type Details = KnownReport['details'];

const coveredBy = ({ baseFormulaId, formulaIds }: Details): string[] => [
  ...(baseFormulaId === null ? [] : [baseFormulaId]),
  ...formulaIds,
];

const coversAllOf = (newer: Details, older: Details): boolean =>
  older.uses.every((use) => newer.uses.includes(use)) &&
  (newer.productIds.length === 0 ||
    (older.productIds.length > 0 && older.productIds.every((id) => newer.productIds.includes(id))));
