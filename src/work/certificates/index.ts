import type { UseCases } from '../use-case.ts';
import { getLotCertificateFile } from './get-certificate-file.ts';
import { listLotCertificates } from './list-lot-certificates.ts';
import { saveLotCertificate } from './save-lot-certificate.ts';
import {
  getFormulaLetterPdf,
  getMaterialLetterPdf,
  listFormulaLetters,
  listMaterialLetters,
} from './write-letters.ts';

export const certificateUseCases = {
  listLotCertificates,
  saveLotCertificate,
  getLotCertificateFile,
  listFormulaLetters,
  getFormulaLetterPdf,
  listMaterialLetters,
  getMaterialLetterPdf,
} satisfies UseCases<
  | 'listLotCertificates'
  | 'saveLotCertificate'
  | 'getLotCertificateFile'
  | 'listFormulaLetters'
  | 'getFormulaLetterPdf'
  | 'listMaterialLetters'
  | 'getMaterialLetterPdf'
>;
