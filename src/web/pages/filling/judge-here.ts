import {
  askAboutFill,
  askAboutTin,
  type FillVerdict,
  fillQuestionCodes,
  judgeFill,
  middleTare,
  refuseEmptyFill,
} from '../../../core/filling/index.ts';
import type { Problem } from '../../../core/problem.ts';
import { type Exact, type ExactInput, exact, readDecimal } from '../../../core/quantity/index.ts';
import { type FillWay, isTin, type Run, type Weight } from './run.ts';

/** A tin as it stands on the scale, before it is kept. */
export interface TinNow {
  readonly gross: string;
  /** Typed, of this tin; '': as the run takes it off. */
  readonly tare: string;
  /** The weight of the same tin before it was filled up. */
  readonly refill: Weight | null;
}

export interface Measured {
  readonly way: FillWay;
  readonly grossGrams: Exact;
  readonly tareGrams: Exact;
  readonly netGrams: Exact;
  readonly errorGrams: Exact;
}

/** What the scale says, less what is taken off, with its worst error; null: not all is there yet. */
export function measureTin(run: Run, { gross, tare, refill }: TinNow): Measured | null {
  const full = readDecimal(gross, 'grossGrams');
  if (!full.ok || full.value.lte(0)) return null;
  const way = refill?.way ?? run.way;
  const empty = readDecimal(takenOff(run, { tare, refill }), 'tareGrams');
  if (!empty.ok) return null;
  const worst = way === 'mean' ? run.errorGrams : run.scale.worstErrorGrams;
  return {
    way,
    grossGrams: full.value,
    tareGrams: empty.value,
    netGrams: full.value.minus(empty.value),
    errorGrams: exact(refill?.errorGrams ?? worst),
  };
}

/** The empty weight of this tin; a tin that is filled up keeps what was taken off it, however others are weighed by now. */
export const takenOff = (run: Run, { tare, refill }: Pick<TinNow, 'tare' | 'refill'>): string =>
  refill?.tareGrams ?? (run.way === 'own' ? tare : (run.tareGrams ?? tare));

/** The workshop's own judge, on the page: so the verdict is there before the tin is kept, and without the network. */
export function judgeTin(run: Run, tin: Pick<Measured, 'netGrams' | 'errorGrams'>): FillVerdict | null {
  const judged = judgeFill({
    declaredGrams: run.declaredGrams,
    basis: run.fillBasis,
    netGrams: tin.netGrams,
    scaleErrorGrams: tin.errorGrams,
    tolerableErrorGrams: run.tolerableErrorGrams,
    aimGrams: run.aimGrams,
  });
  return judged.ok ? judged.value : null;
}

/** What is asked about it, the gravest first; questions that were answered left out. */
export function askHere(run: Run, now: TinNow, sure: readonly string[]): Problem[] {
  const tin = measureTin(run, now);
  if (!tin) return [];
  const last = run.weights.findLast(({ fate }) => fate !== 'slip');
  const reading = {
    grossGrams: tin.grossGrams,
    tareGrams: tin.tareGrams,
    declaredGrams: run.declaredGrams,
    aimGrams: run.aimGrams,
    tinGrams: tinOf(run),
    readabilityGrams: run.scale.readabilityGrams,
    lastGrossGrams: now.refill === null && last ? last.grossGrams : null,
    refilledNetGrams: now.refill?.netGrams ?? null,
    isTareOwn: tin.way === 'own' && now.refill === null,
  };
  const asked = askAboutFill(reading).filter(({ code }) => !sure.includes(code));
  const empty = refuseEmptyFill(reading);
  // Less than the empty tin: a slip of the unit explains it, and else it cannot be.
  if (!empty || asked.some(({ code }) => code === 'reading-other-unit' || code === 'reading-ten-times'))
    return asked;
  return [empty];
}

/** What the empty tin weighs as a rule: taken off, known, or the middle one of those weighed here. */
const tinOf = (run: Run): ExactInput => {
  if (Number(run.tareGrams ?? 0) > 0) return run.tareGrams ?? 0;
  const own = run.weights.filter((each) => each.way === 'own' && isTin(each));
  return run.tinGrams ?? middleTare(own.map(({ tareGrams }) => tareGrams)) ?? 0;
};

/** An empty tin is asked about while it stands there empty: full, nobody can weigh it again. */
export const askEmptyHere = (run: Run, tare: string): Problem | null => {
  const read = readDecimal(tare, 'tareGrams');
  return read.ok ? askAboutTin(read.value, tinOf(run)) : null;
};

/** Which code is a question that a person may answer with "it is so". */
export const isQuestion = ({ code }: Problem): boolean =>
  fillQuestionCodes.some((question) => question === code);

/** The number that the next tin bears. */
export const nextNumber = ({ weights }: Run): number =>
  Math.max(0, ...weights.map(({ number }) => number)) + 1;

/** The tin that was weighed last, where it stands. */
export const lastTin = ({ weights }: Run): Weight | undefined => {
  const last = weights.at(-1);
  return last && isTin(last) ? last : undefined;
};
