import type { z } from 'zod';
import { usesOf } from '../../check/index.ts';
import type { certificates, Saying } from '../../contract/index.ts';
import { done, refused } from '../../core/problem.ts';
import {
  type LotAtHand,
  listCertificatesOfLot,
  listFormulas,
  listLotsAtHand,
  listRevisionLines,
  type Reader,
  type SignedCertificate,
} from '../../storage/index.ts';
import { listRevisionsInForce } from '../formulas/revisions-in-force.ts';
import { thingNotFound } from '../record.ts';
import { saying } from '../saying.ts';
import type { UseCase } from '../use-case.ts';
import { ifraNotes } from './ifra-notes.ts';

type View = z.output<typeof certificates.lotCertificate>;

export const listLotCertificates: UseCase<'listLotCertificates'> = async (
  { storage: { db } },
  { params: { id = '' } },
) => {
  const [lot] = await listLotsAtHand(db, { lotIds: [id] });
  if (!lot) return refused(thingNotFound('id', id));
  const told = (await listCertificatesOfLot(db, id)).map(viewCertificate);
  const [counting] = told;
  return done({
    sentence: sayStanding(lot, counting),
    certificates: told,
    means: counting ? await sayUses(db, lot, counting) : [],
  });
};

const viewCertificate = (row: SignedCertificate): View => ({
  id: row.entry_id,
  reference: row.reference,
  datedOn: row.dated_on,
  details: JSON.parse(row.details) as View['details'],
  file: row.file_name === null ? null : { name: row.file_name, bytes: row.file_bytes ?? 0 },
  by: row.person_name,
  at: row.happened_at,
});

function sayStanding({ item_name: material }: LotAtHand, counting: View | undefined): Saying {
  if (!counting) return saying('lot-without-certificate', { material });
  const { reference, datedOn, details } = counting;
  const facts = { reference, hasDate: datedOn !== null, datedOn: datedOn ?? '', material };
  if (details.isComplete) return saying('lot-certificate-complete', facts);
  return details.constituents.length > 0
    ? saying('lot-certificate-partial', { ...facts, n: details.constituents.length })
    : saying('lot-certificate-figures', facts);
}

/** For every formula in force that the material goes into: whether the conformity statement is for its categories. */
async function sayUses(db: Reader, lot: LotAtHand, { reference, details }: View): Promise<Saying[]> {
  if (details.ifra.length === 0) return [];
  const inForce = await listRevisionsInForce(db);
  const lines = await listRevisionLines(
    db,
    inForce.map(({ id }) => id),
  );
  const names = new Map((await listFormulas(db)).map((row) => [row.id, row]));
  return inForce
    .filter(({ id }) => lines.some((line) => line.revision_id === id && line.item_id === lot.item_id))
    .filter(({ formula_id }) => names.get(formula_id)?.kind !== 'base')
    .flatMap(({ formula_id, details: text }) =>
      ifraNotes(
        { reference, details, lotNumber: lot.number },
        usesOf(JSON.parse(text) as Parameters<typeof usesOf>[0]),
        names.get(formula_id)?.name ?? '',
      ),
    );
}
