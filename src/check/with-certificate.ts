import type { certificates, stock } from '../contract/index.ts';
import { normaliseName } from '../core/safety/index.ts';
import { readCasNumbers } from './read-cas-numbers.ts';

type MaterialDetails = stock.MaterialDetails;
type Constituent = MaterialDetails['constituents'][number];
type Details = certificates.CertificateDetails;

/** The paper that a figure stands on; absent: the one that is cited for all. */
interface OnPaper {
  readonly paper?: string;
}

/** What papers tell of a lot, each figure with the paper that it stands on. */
export interface PaperDetails {
  readonly constituents: readonly (Details['constituents'][number] & OnPaper)[];
  readonly isComplete: boolean;
  readonly peroxide:
    | (NonNullable<Details['peroxide']> & OnPaper & { readonly paperDay?: string | null })
    | null;
  readonly ifra: readonly (Details['ifra'][number] & OnPaper)[];
}

/** What counts of a lot's papers, and by which name they are cited together. */
export interface CountingCertificate {
  readonly reference: string;
  readonly details: PaperDetails;
}

/** A lot that stands by itself among the materials, since its supplier's paper says what is in it. */
export interface CertifiedLot extends CountingCertificate {
  readonly lotId: string;
  readonly lotNumber: string;
  readonly materialId: string;
}

/** By name, or by one of its CAS numbers. */
export const isSameConstituent = (one: Named, other: Named): boolean =>
  normaliseName(one.name) === normaliseName(other.name) ||
  readCasNumbers(one.cas ?? '').some((number) => readCasNumbers(other.cas ?? '').includes(number));

type Named = Pick<Constituent, 'name' | 'cas'>;

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
    ({ paper = reference, ...one }): Constituent => ({ ...one, source: paper, confidence: 'supplier' }),
  );
  if (details.isComplete)
    return { ...material, constituents: told, constituentsAre: 'complete', constituentsPaper: reference };
  const kept = material.constituents.filter((one) => !told.some((newer) => isSameConstituent(one, newer)));
  return { ...material, constituents: [...told, ...kept] };
}
