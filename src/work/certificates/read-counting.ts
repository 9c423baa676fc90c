import {
  type CertifiedLot,
  type CountingCertificate,
  joinPapers,
  type LotPaper,
  listReplaced,
} from '../../check/index.ts';
import type { certificates } from '../../contract/index.ts';
import {
  type CertificateOfLot,
  type LotCertificateRow,
  listCertificates,
  type Reader,
} from '../../storage/index.ts';

export const paperOf = (row: LotCertificateRow): LotPaper => ({
  id: row.entry_id,
  reference: row.reference,
  datedOn: row.dated_on,
  details: JSON.parse(row.details) as certificates.CertificateDetails,
});

/** What counts of the certificates, by lot; of all lots where none are named. */
export async function readCounting(
  db: Reader,
  lotIds?: readonly string[],
): Promise<ReadonlyMap<string, CertifiedLot>> {
  const rows = await listCertificates(db, lotIds);
  const lots = [...new Map(rows.map((row) => [row.lot_id, row])).values()];
  return new Map(
    lots.flatMap((lot) => {
      const counting = joinRows(rows.filter((row) => row.lot_id === lot.lot_id));
      return counting ? [[lot.lot_id, certifiedLot(lot, counting)] as const] : [];
    }),
  );
}

/** The earliest first. undefined: nothing was entered of the lot. */
export function joinRows(rows: readonly LotCertificateRow[]): CountingCertificate | undefined {
  const papers = rows.map(paperOf);
  const details = joinPapers(papers);
  return details && { reference: citeStanding(papers), details };
}

const certifiedLot = (
  { lot_id: lotId, lot_number: lotNumber, item_id: materialId }: CertificateOfLot,
  counting: CountingCertificate,
): CertifiedLot => ({ lotId, lotNumber, materialId, ...counting });

/** The papers that nothing was entered instead of, as they are cited together. */
function citeStanding(papers: readonly LotPaper[]): string {
  const replaced = listReplaced(papers);
  const standing = papers.filter(({ id }) => !replaced.has(id));
  return [...new Set(standing.map(({ reference }) => reference))].join(', ');
}
