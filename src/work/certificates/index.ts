import type { UseCases } from '../use-case.ts';
import { getLotCertificateFile } from './get-certificate-file.ts';
import { listLotCertificates } from './list-lot-certificates.ts';
import { saveLotCertificate } from './save-lot-certificate.ts';

export const certificateUseCases = {
  listLotCertificates,
  saveLotCertificate,
  getLotCertificateFile,
} satisfies UseCases<'listLotCertificates' | 'saveLotCertificate' | 'getLotCertificateFile'>;
