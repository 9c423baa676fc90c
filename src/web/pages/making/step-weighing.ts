import type { steps } from '../../../contract/index.ts';
import { type CupVerdict, judgeCup } from '../../../core/filling/index.ts';
import { typedDecimal, typedDecimalOrNull } from '../../show/typed-decimal.ts';

type StepWeighed = steps.StepWeighed;

/** What is typed of a step that weighs. */
export interface WeighingDraft {
  readonly gross: string;
  readonly tare: string;
  readonly cupMl: string;
  readonly unwhipped: string;
}

/** null: nothing is typed, and the step goes on without. What cannot be read goes on as typed and is named. */
export function readWeighing(draft: WeighingDraft, isCup: boolean): StepWeighed | null {
  const { gross, tare, cupMl, unwhipped } = draft;
  const typed = isCup ? [gross, tare, cupMl, unwhipped] : [gross, tare];
  if (typed.every((text) => text.trim() === '')) return null;
  return {
    grossGrams: typedDecimal(gross),
    tareGrams: tare.trim() === '' ? '0' : typedDecimal(tare),
    cupMl: isCup ? typedDecimalOrNull(cupMl) : null,
    unwhippedGrams: isCup ? typedDecimalOrNull(unwhipped) : null,
  };
}

const IS_NUMBER = /^\d+(\.\d+)?$/;

/** What the cup tells so far; undefined as long as a figure is missing or cannot be meant. */
export function cupSoFar(weighed: StepWeighed | null): CupVerdict | undefined {
  if (!weighed || weighed.cupMl === null) return undefined;
  const { grossGrams, tareGrams, cupMl, unwhippedGrams } = weighed;
  const figures = [grossGrams, tareGrams, cupMl, unwhippedGrams ?? '1'];
  if (!figures.every((figure) => IS_NUMBER.test(figure))) return undefined;
  const cup = judgeCup({ grossGrams, tareGrams, cupMl, unwhippedGrams });
  return cup.ok ? cup.value : undefined;
}
