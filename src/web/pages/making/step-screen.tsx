import { makingWords } from '../../../words/index.ts';
import { useKeptDraft } from '../../api/use-kept-draft.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { Moment } from '../../parts/moment.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { typedDecimalOrNull } from '../../show/typed-decimal.ts';
import type { Batch, Screen } from './batch.ts';
import styles from './bench.module.css';

type Step = Extract<Screen, { kind: 'step' }>;

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
  });
  const save = useWrite('recordStep');
  async function enter() {
    const body = {
      position: screen.position,
      celsius: typedDecimalOrNull(draft.celsius),
      minutes: typedDecimalOrNull(draft.minutes),
      remark: draft.remark,
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
        <p>
          {makingWords.stepDone(screen.done.by)}, <Moment at={screen.done.at} />
          {screen.done.celsius !== null && ` · ${screen.done.celsius} °C`}
          {screen.done.minutes !== null && ` · ${makingWords.wantedMinutes(screen.done.minutes)}`}
          {screen.done.remark !== '' && ` · ${screen.done.remark}`}
        </p>
      ) : (
        <Form label={screen.what} problems={save.problems} onSubmit={() => void enter()}>
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
    </div>
  );
}

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
