import type { certificates } from '../contract/index.ts';
import { normaliseName } from '../core/safety/index.ts';
import type { MaterialDetails } from './checked.ts';
import { readCasNumbers } from './read-cas-numbers.ts';

type Constituent = MaterialDetails['constituents'][number];

/** What counts of a certificate, and by which name it is cited. */
export interface CountingCertificate {
  readonly reference: string;
  readonly details: certificates.CertificateDetails;
}

/** A lot that stands by itself among the materials, since its supplier's paper says what is in it. */
export interface CertifiedLot extends CountingCertificate {
  readonly lotId: string;
  readonly lotNumber: string;
  readonly materialId: string;
}

/**
 * A material as the certificate of one lot has it. A complete paper takes the place of all that was known; of another
 * what it lists takes the place of the same constituents, by name or CAS number, and the rest stays as it was: a paper
 * that does not say that it lists everything takes nothing away.
 */
export function withCertificate(
  material: MaterialDetails,
  { reference, details }: CountingCertificate,
): MaterialDetails {
  const told = details.constituents.map(
    (one): Constituent => ({ ...one, source: reference, confidence: 'supplier' }),
  );
  if (details.isComplete)
    return { ...material, constituents: told, constituentsAre: 'complete', constituentsPaper: reference };
  const names = new Set(told.map(({ name }) => normaliseName(name)));
  const numbers = new Set(told.flatMap(({ cas }) => readCasNumbers(cas ?? '')));
  const kept = material.constituents.filter(
    ({ name, cas }) =>
      !names.has(normaliseName(name)) && !readCasNumbers(cas ?? '').some((number) => numbers.has(number)),
  );
  return { ...material, constituents: [...told, ...kept] };
}
