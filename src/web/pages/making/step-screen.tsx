import type { Problem } from '../../../core/problem.ts';
import { makingWords, sayProblem } from '../../../words/index.ts';
import { useBenchWrite } from '../../api/use-bench-write.ts';
import { useKeptDraft } from '../../api/use-kept-draft.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { typedDecimalOrNull } from '../../show/typed-decimal.ts';
import type { Batch, Step } from './batch.ts';
import styles from './bench.module.css';
import { CupSays } from './cup-says.tsx';
import { DeviationDialog, type DeviationSaid } from './deviation-dialog.tsx';
import { StepDone } from './step-done.tsx';
import { cupSoFar, readWeighing, type WeighingDraft } from './step-weighing.ts';

interface Props {
  readonly batch: Batch;
  readonly screen: Step;
  readonly doneWord: string;
  readonly onDone: () => void;
  readonly all: number;
}

/** One step of the method, with the temperature and time that it wants and had. */
export function StepScreen({ batch, screen, doneWord, onDone, all }: Props) {
  const { draft, set, forget } = useKeptDraft(`bench.${batch.id}.step.${screen.position}`, {
    celsius: '',
    minutes: '',
    remark: '',
    gross: '',
    tare: '',
    cupMl: '',
    unwhipped: '',
  });
  const save = useBenchWrite('recordStep');
  const weighed = WEIGHS.has(screen.stepKind) ? readWeighing(draft, screen.stepKind === 'cup') : null;
  const cup = cupSoFar(weighed);
  const asked = save.problems.find((each) => each.code === 'heat-not-wanted');
  async function enter(deviation?: DeviationSaid) {
    const body = {
      position: screen.position,
      celsius: typedDecimalOrNull(draft.celsius),
      minutes: typedDecimalOrNull(draft.minutes),
      remark: draft.remark,
      weighed,
      ...(deviation && { deviation }),
    };
    if (!(await save.write({ params: { id: batch.id }, body }))) return;
    forget();
    onDone();
  }
  return (
    <div className={styles.screen}>
      <p className="soft">
        {makingWords.stepOf(screen.screen + 1, all)}. {screen.stage}.
      </p>
      <Wanted screen={screen} />
      {screen.caution !== '' && <p className={styles.caution}>{screen.caution}</p>}
      {screen.done ? (
        <StepDone screen={screen} done={screen.done} />
      ) : (
        <Form label={screen.what} problems={asked ? NONE : save.problems} onSubmit={() => void enter()}>
          {WEIGHS.has(screen.stepKind) && (
            <Weighing isCup={screen.stepKind === 'cup'} draft={draft} set={set} />
          )}
          {cup && <CupSays cup={cup} tins={screen.tins} />}
          <SideBySide>
            <Field
              label={makingWords.celsius}
              where="celsius"
              kind="decimal"
              unit="°C"
              value={draft.celsius}
              onChange={set('celsius')}
              isOptional
              isBench
            />
            <Field
              label={makingWords.minutes}
              where="minutes"
              kind="decimal"
              unit="min"
              value={draft.minutes}
              onChange={set('minutes')}
              isOptional
              isBench
            />
          </SideBySide>
          <Field
            label={makingWords.remark}
            where="remark"
            value={draft.remark}
            onChange={set('remark')}
            isOptional
            isBench
          />
          <Button type="submit" isAct isBench isWide isBusy={save.isBusy}>
            {doneWord}
          </Button>
        </Form>
      )}
      <DeviationDialog
        title={makingWords.outsideTitle}
        caution={asked && sayProblem(asked)}
        isOpen={asked !== undefined}
        onClose={save.forget}
        onSaid={(said) => void enter(said)}
      />
    </div>
  );
}

const NONE: readonly Problem[] = [];

const WEIGHS: ReadonlySet<string> = new Set(['weigh', 'cup']);

interface WeighingProps {
  readonly isCup: boolean;
  readonly draft: WeighingDraft;
  readonly set: (name: keyof WeighingDraft) => (value: string) => void;
}

/** Gross and tare of what the step weighs; of a cup what it holds, and held before whipping. */
const Weighing = ({ isCup, draft, set }: WeighingProps) => {
  const field = (name: keyof WeighingDraft, label: string, where: string, more: object = {}) => (
    <Field
      label={label}
      where={where}
      kind="decimal"
      unit="g"
      value={draft[name]}
      onChange={set(name)}
      isBench
      {...more}
    />
  );
  return (
    <>
      <SideBySide>
        {field('gross', isCup ? makingWords.cupGross : makingWords.weighedGross, 'weighed.grossGrams')}
        {field('tare', isCup ? makingWords.cupTare : makingWords.tare, 'weighed.tareGrams')}
      </SideBySide>
      {isCup && (
        <SideBySide>
          {field('cupMl', makingWords.cupMl, 'weighed.cupMl', { unit: 'ml' })}
          {field('unwhipped', makingWords.cupBefore, 'weighed.unwhippedGrams', {
            isOptional: true,
            hint: makingWords.cupBeforeHint,
          })}
        </SideBySide>
      )}
    </>
  );
};

const Wanted = ({ screen }: { readonly screen: Step }) => (
  <p className={styles.digits}>
    {makingWords.wanted(screen.leastCelsius, screen.mostCelsius)}
    {screen.minutes !== null && (
      <>
        {' '}
        {screen.minutes}
        <small>min</small>
      </>
    )}
  </p>
);
