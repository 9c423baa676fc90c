import { done, type Problem, problem, type Result, refused } from '../../../core/problem.ts';
import { readWhole } from '../../show/read-whole.ts';
import { typedDecimal, typedDecimalOrNull } from '../../show/typed-decimal.ts';
import type { Constituent, MaterialDetails } from './material.ts';

export interface ConstituentDraft extends Omit<Constituent, 'cas'> {
  readonly key: string;
  readonly cas: string;
}

/** The details while somebody types: numbers and lists are text. */
export interface MaterialDraft
  extends Omit<
    MaterialDetails,
    | 'cas'
    | 'plantPart'
    | 'process'
    | 'densityGramsPerMl'
    | 'constituents'
    | 'supplierMostPercent'
    | 'brimMl'
    | 'tareGrams'
    | 'reorderBelow'
    | 'packSize'
    | 'packPrice'
    | 'leadDays'
  > {
  readonly cas: string;
  readonly plantPart: string;
  readonly process: string;
  readonly densityGramsPerMl: string;
  readonly constituents: readonly ConstituentDraft[];
  readonly supplierMostPercent: string;
  readonly brimMl: string;
  readonly tareGrams: string;
  readonly reorderBelow: string;
  readonly packSize: string;
  readonly packPrice: string;
  readonly leadDays: string;
}

export const EMPTY_MATERIAL: MaterialDetails = {
  kind: 'ingredient',
  name: '',
  supplier: '',
  inciEu: '',
  inciUs: '',
  botanical: '',
  cas: [],
  plantPart: null,
  process: null,
  role: null,
  isNano: false,
  densityGramsPerMl: null,
  origins: null,
  constituents: [],
  constituentsAre: null,
  constituentsPaper: '',
  supplierMostPercent: null,
  supplierPaper: '',
  caution: '',
  packagingKind: null,
  brimMl: null,
  tareGrams: null,
  reorderBelow: null,
  packSize: null,
  packPrice: null,
  leadDays: null,
};

export const draftOfConstituent = (constituent: Constituent, index: number): ConstituentDraft => ({
  ...constituent,
  key: `${index} ${constituent.name}`,
  cas: constituent.cas ?? '',
});

export const draftOfMaterial = (details: MaterialDetails): MaterialDraft => ({
  ...details,
  cas: details.cas.join(', '),
  plantPart: details.plantPart ?? '',
  process: details.process ?? '',
  densityGramsPerMl: details.densityGramsPerMl ?? '',
  constituents: details.constituents.map(draftOfConstituent),
  supplierMostPercent: details.supplierMostPercent ?? '',
  brimMl: details.brimMl ?? '',
  tareGrams: details.tareGrams ?? '',
  reorderBelow: details.reorderBelow ?? '',
  packSize: details.packSize ?? '',
  packPrice: details.packPrice ?? '',
  leadDays: details.leadDays === null ? '' : String(details.leadDays),
});

const textOrNull = (typed: string): string | null => (typed.trim() === '' ? null : typed.trim());

const readConstituent = ({ key: _, cas, ...rest }: ConstituentDraft): Constituent => ({
  ...rest,
  cas: textOrNull(cas),
  leastPercent: typedDecimal(rest.leastPercent),
  typicalPercent: typedDecimal(rest.typicalPercent),
  mostPercent: typedDecimal(rest.mostPercent),
});

/** An ingredient says nothing of tins, packaging nothing of plants: what was typed before the kind changed is left out. */
function onlyOfKind(details: MaterialDetails): MaterialDetails {
  if (details.kind === 'packaging') {
    const {
      inciEu,
      inciUs,
      botanical,
      cas,
      plantPart,
      process,
      role,
      densityGramsPerMl,
      origins,
      constituents,
      constituentsAre,
      constituentsPaper,
      supplierMostPercent,
      supplierPaper,
    } = EMPTY_MATERIAL;
    const none = {
      inciEu,
      inciUs,
      botanical,
      cas,
      plantPart,
      process,
      role,
      densityGramsPerMl,
      origins,
      constituents,
      constituentsAre,
      constituentsPaper,
      supplierMostPercent,
      supplierPaper,
    };
    return { ...details, ...none, packagingKind: details.packagingKind ?? 'other' };
  }
  return { ...details, packagingKind: null, brimMl: null, tareGrams: null };
}

export function readMaterialDraft(draft: MaterialDraft): Result<MaterialDetails> {
  const leadDays = draft.leadDays.trim() === '' ? done(null) : readWhole(draft.leadDays, 'details.leadDays');
  const problems: Problem[] = [
    ...(draft.name.trim() === '' ? [problem('text-missing', 'details.name')] : []),
    ...(leadDays.ok ? [] : leadDays.problems),
  ];
  if (problems.length > 0 || !leadDays.ok) return refused(...problems);
  return done(
    onlyOfKind({
      ...draft,
      cas: draft.cas.split(/[,;\s]+/).filter((one) => one !== ''),
      plantPart: textOrNull(draft.plantPart),
      process: textOrNull(draft.process),
      densityGramsPerMl: typedDecimalOrNull(draft.densityGramsPerMl),
      constituents: draft.constituents.map(readConstituent),
      supplierMostPercent: typedDecimalOrNull(draft.supplierMostPercent),
      brimMl: typedDecimalOrNull(draft.brimMl),
      tareGrams: typedDecimalOrNull(draft.tareGrams),
      reorderBelow: typedDecimalOrNull(draft.reorderBelow),
      packSize: typedDecimalOrNull(draft.packSize),
      packPrice: typedDecimalOrNull(draft.packPrice),
      leadDays: leadDays.value,
    }),
  );
}
