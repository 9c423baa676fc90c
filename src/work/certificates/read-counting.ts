import type { CertifiedLot } from '../../check/index.ts';
import type { certificates } from '../../contract/index.ts';
import { listStandingCertificates, type Reader, type StandingCertificate } from '../../storage/index.ts';

export const viewStanding = (row: StandingCertificate): CertifiedLot => ({
  lotId: row.lot_id,
  lotNumber: row.lot_number,
  materialId: row.item_id,
  reference: row.reference,
  details: JSON.parse(row.details) as certificates.CertificateDetails,
});

/** The certificates that count, by lot; of all lots where none are named. */
export async function readCounting(
  db: Reader,
  lotIds?: readonly string[],
): Promise<ReadonlyMap<string, CertifiedLot>> {
  const rows = await listStandingCertificates(db, lotIds);
  return new Map([...rows].map(([lotId, row]) => [lotId, viewStanding(row)]));
}
