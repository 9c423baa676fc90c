/**
 * Rules of the average system for who packs: the three rules, where the system holds, the records of the checks.
 * Directive 76/211/EEC and the regulations of Great Britain and Northern Ireland that carry it.
 */
import type { ReferenceSource, SourcedRow } from '../sourced-row.ts';

export interface PackersRule extends SourcedRow {
  readonly rule: 1 | 2 | 3;
  readonly inForce: boolean;
  readonly text: string;
  /** Working figure for the share of packs below limit 1. */
  readonly workingLimitFraction?: number;
}

export interface NetContentsScope extends SourcedRow {
  readonly text: string;
  readonly nominalGramsOrMl?: { readonly from: number; readonly upTo: number };
  readonly belowGramsOrMl?: number;
  readonly overGramsOrMl?: number;
  readonly temperatureCelsius?: number;
}

export interface NetContentsRecordRule extends SourcedRow {
  readonly text: string;
  readonly keepYears?: number;
  readonly calibrationMonths?: number;
}

export interface NationalPeculiarity extends SourcedRow {
  readonly country: string;
  readonly text: string;
}

export const packersRules: readonly PackersRule[] = [
  {
    id: 'packers-rule-1', rule: 1, inForce: true,
    text: 'contents of the batch not less, on average, than the nominal quantity', source: 'uk-ts',
    alsoSources: ['eu-76-211'], confidence: 'read',
  },
  {
    id: 'packers-rule-2', rule: 2, inForce: true,
    text: 'proportion short by more than one TNE (non-standard, below T1 = Qn - TNE) small enough to pass the reference test; working figure 2.5 % (one in forty)',
    workingLimitFraction: 0.025, source: 'uk-ts', confidence: 'read',
  },
  {
    id: 'packers-rule-3', rule: 3, inForce: true,
    text: 'no package short by more than twice the TNE (inadequate, below T2 = Qn - 2 TNE); under the Directive such a package may not carry the e-mark',
    source: 'uk-ts', alsoSources: ['eu-76-211'], confidence: 'read',
  },
  {
    id: 'packers-rule-2-french-old', rule: 2, inForce: false,
    text: 'an earlier version of the French decree set the rule-2 limit at 2 % and halved the TNE for some products',
    workingLimitFraction: 0.02, source: 'fr-78-166', confidence: 'read',
  },
];

export const netContentsScope: readonly NetContentsScope[] = [
  {
    id: 'average-system-range', text: 'average system range', nominalGramsOrMl: { from: 5, upTo: 25000 },
    source: 'uk-gov', confidence: 'read',
  },
  {
    id: 'average-system-exclusions',
    text: 'excluded unless e-marked: package holding a single application of a cosmetic product; package intended for despatch outside the UK; package not meant for the final consumer',
    source: 'uk-2006-659', confidence: 'read',
  },
  {
    id: 'outside-range',
    text: 'below 5 g/ml or above 25 kg/l: outside the average rules, content must be at least what is declared',
    belowGramsOrMl: 5, overGramsOrMl: 25000, source: 'uk-ts', confidence: 'read',
  },
  {
    id: 'catch-weight',
    text: 'catch-weight packs (quantity differs from pack to pack, each individually marked): outside the average system; each pack must hold at least its own stated quantity',
    source: 'uk-ts', confidence: 'read',
  },
  {
    id: 'minimum-system', text: 'minimum system: allowed alternative, every pack holds at least the stated quantity',
    source: 'uk-gov', confidence: 'read',
  },
  {
    id: 'volume-temperature',
    text: 'quantities stated in volume are judged at 20 degC whatever the filling or checking temperature (not for frozen goods)',
    temperatureCelsius: 20, source: 'eu-76-211', confidence: 'read',
  },
];

export const netContentsRecordRules: readonly NetContentsRecordRule[] = [
  {
    id: 'record-of-checks',
    text: 'packer or importer who checks by sampling must keep a record of the checks and of the corrections and adjustments they showed to be needed (reg 9(1)(b)(ii))',
    source: 'uk-reg9', confidence: 'read-secondary',
  },
  {
    id: 'record-keep-until',
    text: 'keep until the earlier of the consume-by date marked on the pack and one year after the packs left the packer (reg 9(5))',
    keepYears: 1, source: 'uk-reg9', confidence: 'read-secondary',
  },
  {
    id: 'measure-every-pack',
    text: 'alternative to sampling: measure the contents of every package with suitable equipment (reg 9(1)(a))',
    source: 'uk-reg9', confidence: 'memory',
  },
  {
    id: 'record-traceable',
    text: 'good practice: records traceable to the packages, the person and the instrument, kept at least 2 years; may be electronic',
    keepYears: 2, source: 'oiml-g21', confidence: 'read',
  },
  {
    id: 'calibration-interval',
    text: 'good practice: calibrate measuring instruments at least every 12 months, daily pre-use check of level, zero and span',
    calibrationMonths: 12, source: 'oiml-g21', confidence: 'read',
  },
  {
    id: 'document-per-product',
    text: 'document nominal quantity, target quantity, action limits, warning limits or other rules, process standard deviation per product and size',
    source: 'oiml-g21', confidence: 'read',
  },
  {
    id: 'sample-after-adjustment',
    text: 'sample after each manual adjustment; if out of control, hold everything packed since the last good sample',
    source: 'oiml-g21', confidence: 'read',
  },
  {
    id: 'software-validated',
    text: 'software used for control must be validated, for instance by comparing its results with manual calculation, and protected from change',
    source: 'oiml-g21', confidence: 'read',
  },
];

export const netContentsNationalPeculiarities: readonly NationalPeculiarity[] = [
  {
    id: 'france-halved-error', country: 'France',
    text: 'article 1 halves the TNE from 25 g upward for: goods solid or not easily flowing at sale but fluid when filled, without visible solid or gaseous parts, filled in one go (poured balms); powders; pieces or grains each at most one sixth of the TNE; spreadable pastes not treated further after weighing. Probably a left-over of the pre-1978 two-column table: the newer decree text no longer refers to it. Check that it is still in force before relying on either reading.',
    source: 'fr-arr-1978', confidence: 'read',
  },
];

export const packersRuleSources: readonly ReferenceSource[] = [
  {
    id: 'uk-2006-659',
    title: 'Weights and Measures (Packaged Goods) Regulations 2006 (SI 2006/659), Schedule 2 paragraphs 2 to 4, regulation 3',
    where: 'legislation.gov.uk/uksi/2006/659', read: true,
  },
  {
    id: 'uk-gov',
    title: 'Weights and measures: packaged goods (public guidance page with TNE table, rounding rule, minimum and average system)',
    where: 'gov.uk/weights-measures-and-packaging-the-law/packaged-goods', read: true,
  },
  {
    id: 'uk-ts', title: 'Trading standards leaflets on packaged goods - average quantity',
    where: 'bromley.gov.uk leaflet 122651; tradingstandards.gov.uk; Business Companion quick guide', read: true,
  },
  {
    id: 'uk-reg9', title: 'Regulation 9 of SI 2006/659 as quoted in a records-retention wiki (secondary)',
    where: 'records-retention wiki page', read: true,
  },
  {
    id: 'eu-76-211', title: 'Council Directive 76/211/EEC as amended by 78/891/EEC, Annexes I and II',
    where: 'legislation.gov.uk/eudr/1976/211; eur-lex 31976L0211', read: true,
  },
  {
    id: 'fr-78-166', title: 'Decret 78-166 du 31 janvier 1978, article 4 (two versions)', where: 'legifrance.gouv.fr',
    read: true,
  },
  {
    id: 'fr-arr-1978', title: 'Arrete du 20 octobre 1978 (preemballages), articles 1, 2, 8, 10, 11',
    where: 'legifrance.gouv.fr', read: true,
  },
  {
    id: 'oiml-g21',
    title: 'OIML G 21:2017 Guidance for defining the requirements for a certification system for prepackages, Annex A',
    where: 'oiml.org G 21', read: true,
  },
];
