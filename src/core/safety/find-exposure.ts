import { type Exact, type ExactInput, exact, HUNDRED } from '../quantity/index.ts';

export interface ExposureQuestion {
  /** mg of product per kg of body weight and day, after the retention factor. */
  readonly relativeExposureMgPerKgDay: ExactInput;
  /** Of the substance in the product, by mass. */
  readonly percent: ExactInput;
  /** Share of it that enters the body. */
  readonly absorptionPercent: ExactInput;
}

/**
 * Systemic exposure dose in mg of a substance per kg of body weight and day:
 * SED = relative exposure x percent / 100 x absorption / 100, with the relative exposure of the product after its
 * retention factor. Source: SCCS Notes of Guidance, 12th revision (SCCS/1647/22), the calculation by percent absorbed;
 * Annex I, part A, point 7 of Regulation (EC) No 1223/2009. Exact: only multiplications and powers of ten.
 */
export const findExposureMgPerKgDay = (question: ExposureQuestion): Exact =>
  exact(question.relativeExposureMgPerKgDay)
    .times(question.percent)
    .times(question.absorptionPercent)
    .div(HUNDRED.times(HUNDRED));
