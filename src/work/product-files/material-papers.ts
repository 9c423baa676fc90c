import type { OpenedRevision } from '../../check/index.ts';
import { type CertificateOfLot, findAttachment, listCertificates } from '../../storage/index.ts';
import { printWords } from '../../words/index.ts';
import type { Context } from '../context.ts';
import type { MaterialDetails } from '../stock/material-view.ts';
import { plainName, putFile, textFile } from './zip-folder.ts';

const { names, material: words } = printWords.written;

/** Of each material what its papers say, as it was entered, with the certificates of its lots. */
export async function putMaterialPapers(
  { storage: { db } }: Context,
  { materials }: OpenedRevision,
  folder: Map<string, Uint8Array>,
): Promise<void> {
  const certificates = await listCertificates(db);
  for (const [id, details] of materials) {
    const own = certificates.filter((row) => row.item_id === id);
    const place = `${names.materials}/${plainName(details.name)}`;
    putFile(folder, `${place}.txt`, textFile(writeMaterial(details, own).join('\n')));
    for (const { attachment_id, lot_number } of own) {
      const file = attachment_id === null ? undefined : await findAttachment(db, attachment_id);
      const name = file && `${place}-${plainName(lot_number)}-${plainName(file.name)}`;
      if (file && name) putFile(folder, name, new Uint8Array(file.bytes));
    }
  }
}

const writeMaterial = (
  details: MaterialDetails,
  certificates: readonly CertificateOfLot[],
): readonly string[] => [
  details.name,
  `${words.inci}: ${details.inciEu || words.missing}`,
  `${words.cas}: ${details.cas.join(', ') || words.missing}`,
  `${words.supplier}: ${details.supplier || words.missing}`,
  `${words.paper}: ${details.constituentsPaper || words.missing}`,
  `${words.supplierMost}: ${mostOf(details)}`,
  ...certificates.map((row) => words.certificate(row.lot_number, row.reference, row.dated_on)),
  '',
  ...details.constituents.map(writeConstituent),
];

const mostOf = ({ supplierMostPercent, supplierPaper }: MaterialDetails): string =>
  supplierMostPercent === null ? words.missing : `${supplierMostPercent} % (${supplierPaper})`;

const writeConstituent = (one: MaterialDetails['constituents'][number]): string => {
  const name = one.cas === null ? one.name : `${one.name} (${one.cas})`;
  const range = words.range(one.leastPercent, one.mostPercent, one.typicalPercent);
  return `${name}: ${range}; ${one.source} [${one.confidence}]`;
};
