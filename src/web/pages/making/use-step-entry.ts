import { useRef } from 'react';
import { judgeCup } from '../../../core/filling/index.ts';
import {
  askAboutCup,
  findBowlGrams,
  judgeBowlWeight,
  judgeStep,
  readBowlEvents,
} from '../../../core/making/index.ts';
import type { Problem } from '../../../core/problem.ts';
import { type Exact, readDecimal } from '../../../core/quantity/index.ts';
import type { BodyOf } from '../../api/shapes.ts';
import { type BenchWrite, useBenchWrite } from '../../api/use-bench-write.ts';
import { useKeptDraft } from '../../api/use-kept-draft.ts';
import { typedDecimalOrNull } from '../../show/typed-decimal.ts';
import type { Batch, Step } from './batch.ts';
import type { DeviationSaid } from './deviation-dialog.tsx';
import { minutesTold } from './list-timers.ts';
import type { StepProps } from './step-props.ts';

const EMPTY = {
  celsius: '',
  minutes: '',
  remark: '',
  gross: '',
  tare: '',
  cupMl: '',
  unwhipped: '',
};
export type StepDraft = typeof EMPTY;

type Body = Omit<BodyOf<'recordStep'>, 'stamp'>;
export type StepParts = Partial<Pick<Body, 'minutes' | 'weighed'>>;

/** What the workshop asks back about, answered with what was done differently and why. */
const ASKED: ReadonlySet<string> = new Set([
  'heat-not-wanted',
  'time-too-short',
  'bowl-heavier-than-filled',
  'bowl-half-gone',
  'cup-heavier-than-bowl',
  'cup-density-unusual',
]);

export interface StepEntry {
  readonly draft: StepDraft;
  readonly set: (name: keyof StepDraft) => (value: string) => void;
  /** Several figures at once. */
  readonly take: (part: Partial<StepDraft>) => void;
  readonly enter: (parts?: StepParts) => Promise<void>;
  readonly asked: readonly Problem[];
  readonly answer: (said: DeviationSaid) => Promise<void>;
  readonly save: BenchWrite<'recordStep'>;
}

/** What is typed of a step, and its entry: asked about on this tablet too, where the workshop does not answer. */
export function useStepEntry({ batch, screen, onDone, onSent }: StepProps): StepEntry {
  const { draft, set, take, forget } = useKeptDraft(`bench.${batch.id}.step.${screen.position}`, EMPTY);
  const save = useBenchWrite('recordStep', { judge: ({ body }) => judgeHere(batch, screen, body) });
  /** What the question is about: the answer keeps that, whatever the timer says by then. */
  const last = useRef<Body>(undefined);
  async function send(body: Body, deviation?: DeviationSaid) {
    last.current = body;
    onSent?.('sent');
    const kept = await save.write({
      params: { id: batch.id },
      body: { ...body, ...(deviation && { deviation }) },
    });
    onSent?.(kept ? 'entered' : 'refused');
    if (!kept) return;
    forget();
    onDone();
  }
  return {
    draft,
    set,
    take,
    enter: (parts = {}) =>
      send({
        position: screen.position,
        celsius: typedDecimalOrNull(draft.celsius),
        minutes: minutesTold(parts.minutes, typedDecimalOrNull(draft.minutes)),
        remark: draft.remark,
        weighed: parts.weighed ?? null,
      }),
    asked: save.problems.filter(({ code }) => ASKED.has(code)),
    answer: async (said) => {
      if (last.current) await send(last.current, said);
    },
    save,
  };
}

const readOrNull = (text: string | null): Exact | null => {
  const read = text === null ? undefined : readDecimal(text, 'value');
  return read?.ok ? read.value : null;
};

function judgeHere(batch: Batch, screen: Step, body: Body): Problem[] {
  const { weighed = null, deviation } = body;
  const odd =
    weighed && screen.stepKind === 'cup' ? judgeCup({ ...weighed, cupMl: weighed.cupMl ?? '1' }) : null;
  if (odd && !odd.ok) return odd.problems.map((each) => ({ ...each, where: `weighed.${each.where}` }));
  if (deviation) return [];
  const had = { celsius: readOrNull(body.celsius), minutes: readOrNull(body.minutes) };
  const asked = judgeStep({ ...screen, kind: screen.stepKind }, had);
  if (screen.stepKind === 'cup' && weighed?.cupMl)
    return [
      ...asked,
      ...askAboutCup({ ...weighed, cupMl: weighed.cupMl }, bowlBefore(batch, screen), 'weighed'),
    ];
  if (screen.stepKind !== 'weigh' || !weighed) return asked;
  const [gross, tare] = [readOrNull(weighed.grossGrams), readOrNull(weighed.tareGrams)];
  if (!gross || !tare) return asked;
  return [...asked, ...judgeBowlWeight(gross.minus(tare), bowlBefore(batch, screen), 'weighed.grossGrams')];
}

/** What lies in the bowl before a step, by what was weighed. */
export const bowlBefore = ({ screens }: Batch, { screen }: Pick<Step, 'screen'>): Exact =>
  findBowlGrams(readBowlEvents(screens.filter((each) => each.screen < screen)));
