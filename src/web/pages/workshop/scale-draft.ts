import type { WriteOf } from '../../api/shapes.ts';
import { typedDecimal, typedDecimalOrNull } from '../../show/typed-decimal.ts';
import type { Scale } from './workshop.ts';

export interface ScaleDraft {
  readonly name: string;
  readonly capacityGrams: string;
  readonly readabilityGrams: string;
  readonly repeatabilityGrams: string;
  readonly accuracyClass: string;
  readonly verificationIntervalGrams: string;
  readonly checkWeightGrams: string;
  readonly checkToleranceGrams: string;
}

/** What a person writes down of a scale: the rest it proves by itself. */
type Written = Omit<Scale, 'id' | 'repeatability' | 'check'>;

export const draftOfScale = (scale: Written): ScaleDraft => ({
  name: scale.name,
  capacityGrams: scale.capacityGrams,
  readabilityGrams: scale.readabilityGrams,
  repeatabilityGrams: scale.repeatabilityGrams ?? '',
  accuracyClass: scale.accuracyClass ?? '',
  verificationIntervalGrams: scale.verificationIntervalGrams ?? '',
  checkWeightGrams: scale.checkWeightGrams ?? '',
  checkToleranceGrams: scale.checkToleranceGrams ?? '',
});

export const NEW_SCALE: Written = {
  version: 0,
  name: '',
  capacityGrams: '',
  readabilityGrams: '',
  repeatabilityGrams: null,
  accuracyClass: null,
  verificationIntervalGrams: null,
  checkWeightGrams: null,
  checkToleranceGrams: null,
};

/** A scale that is not verified has no verification interval, whatever was typed before. */
export const readScaleDraft = (
  draft: ScaleDraft,
): Omit<WriteOf<'saveScale'>['body']['scale'], 'id' | 'version'> => ({
  name: draft.name,
  capacityGrams: typedDecimal(draft.capacityGrams),
  readabilityGrams: typedDecimal(draft.readabilityGrams),
  repeatabilityGrams: typedDecimalOrNull(draft.repeatabilityGrams),
  accuracyClass: draft.accuracyClass === '' ? null : (draft.accuracyClass as Scale['accuracyClass']),
  verificationIntervalGrams:
    draft.accuracyClass === '' ? null : typedDecimalOrNull(draft.verificationIntervalGrams),
  checkWeightGrams: typedDecimalOrNull(draft.checkWeightGrams),
  checkToleranceGrams: typedDecimalOrNull(draft.checkToleranceGrams),
});
