import type { Saying } from '../../contract/index.ts';
import { type CertificateOfLot, listCertificates, listLotsAtHand, type Reader } from '../../storage/index.ts';
import { saying } from '../saying.ts';
import { walkLots } from '../trace/walk-lots.ts';
import { type Chapter, tableOf, type Words, word } from './write-chapter.ts';

/** A lot of an ingredient that tins of the product were made of, with the papers that it has. */
export interface LotUsed {
  readonly material: string;
  readonly number: string;
  readonly supplier: string;
  readonly certificates: readonly CertificateOfLot[];
}

/** Every lot of an ingredient behind these lots of tins, bases and all; by material, then number. */
export async function readLotsUsed(db: Reader, tins: readonly string[]): Promise<LotUsed[]> {
  if (tins.length === 0) return [];
  const { reached } = await walkLots(db, tins, 'back');
  if (reached.length === 0) return [];
  const lots = (await listLotsAtHand(db, { lotIds: reached.map(({ lotId }) => lotId) })).filter(
    (lot) => lot.item_kind === 'material' && lot.unit === 'g',
  );
  const papers = await listCertificates(
    db,
    lots.map(({ id }) => id),
  );
  return lots
    .map((lot) => ({
      material: lot.item_name,
      number: lot.number,
      supplier: lot.supplier,
      certificates: papers.filter((row) => row.lot_id === lot.id),
    }))
    .sort((one, other) => keyOf(one).localeCompare(keyOf(other), 'en-GB', { numeric: true }));
}

const keyOf = ({ material, number }: LotUsed): string => `${material} ${number}`;

/** What each lot is known by: a row for each paper, and one for a lot that has none. */
export const certificatesTable = (lots: readonly LotUsed[]): Chapter['tables'] =>
  tableOf(
    saying('pf-table-certificates'),
    ['pf-col-material', 'pf-col-lot', 'pf-col-certificate', 'pf-col-dated', 'pf-col-supplier'].map((code) =>
      word(saying(code)),
    ),
    lots.flatMap((lot) =>
      lot.certificates.length === 0
        ? [[lot.material, lot.number, saying('pf-no-certificate'), '', sourceOf(lot)]]
        : lot.certificates.map((paper): Words[] => [
            lot.material,
            lot.number,
            paper.reference,
            datedOf(paper),
            sourceOf(lot),
          ]),
    ),
  );

const sourceOf = ({ supplier }: LotUsed): Words => (supplier === '' ? saying('pf-missing') : supplier);
const datedOf = ({ dated_on }: CertificateOfLot): Saying =>
  dated_on === null ? saying('pf-undated') : saying('pf-dated', { on: dated_on });
