import { useState } from 'react';
import { Button as AriaButton } from 'react-aria-components';
import type { steps } from '../../../contract/index.ts';
import { exact } from '../../../core/quantity/index.ts';
import { makingWords, sayNumber, stepWords } from '../../../words/index.ts';
import { useBenchWrite } from '../../api/use-bench-write.ts';
import { useKeptDraft } from '../../api/use-kept-draft.ts';
import { workshopNow } from '../../away/clock.ts';
import { Button } from '../../parts/button.tsx';
import { Form } from '../../parts/form.tsx';
import { typedDecimalOrNull } from '../../show/typed-decimal.ts';
import { AirSays } from './air-says.tsx';
import type { Batch, Step } from './batch.ts';
import { CupPad } from './cup-pad.tsx';
import { CupQuestion, isCupQuestion, judgeRoundHere } from './cup-question.tsx';
import { fullCupOf, judgeBowl } from './judge-bowl.ts';
import { minutesSince, type RunningTimer } from './list-timers.ts';
import { LookPicture } from './look-picture.tsx';
import { NumberPad } from './number-pad.tsx';
import { densitiesOf, meanDensityOf } from './read-air.ts';
import { rememberCup } from './remembered-cup.ts';
import styles from './step.module.css';
import type { StepProps } from './step-props.ts';
import { readWeighing } from './step-weighing.ts';
import { markStood, readStood } from './stood-marks.ts';
import { weighedBefore } from './whip-state.ts';

interface Props {
  readonly batch: Batch;
  readonly screen: Step;
  readonly load: number;
  readonly round: number;
  readonly timer: RunningTimer;
  readonly onSent?: StepProps['onSent'] | undefined;
}

const { whip: words } = stepWords;
const LOOKS = Object.entries(stepWords.looks) as [steps.WhippedLook, string][];
const EMPTY = {
  ...{ looked: '', celsius: '', cups: '[]', tinOf: '', ran: '' },
  ...{ gross: '', tare: '', cupMl: '', unwhipped: '' },
};

/** The machine stands: what it looks like by a tap, a cup and a temperature for those who want them, on or stop. */
export function WhipLook({ batch, screen, load, round, timer, onSent }: Props) {
  const { draft, set, take, forget } = useKeptDraft(
    `bench.${batch.id}.step.${screen.position}.round.${load}.${round}`,
    EMPTY,
    'tablet',
  );
  const save = useBenchWrite('recordRound', { judge: judgeRoundHere(batch, screen) });
  const [goes, setGoes] = useState<'on' | 'stop'>('on');
  const asked = save.problems.filter(isCupQuestion);
  const [isOpen, setOpen] = useState({ cup: draft.gross !== '', heat: draft.celsius !== '' });
  // When somebody began to look the machine stood: what the clock says later is no whipping.
  const [stoodAt] = useState(() => readStood(timer) ?? Math.min(workshopNow(), timer.endsAt ?? Infinity));
  const looked = LOOKS.find(([look]) => look === draft.looked)?.[0];
  const kept = JSON.parse(draft.cups) as steps.FullCup[];
  const typed = fullCupOf(readWeighing(draft, true), draft.tinOf);
  const cups = typed ? [...kept, typed] : kept;
  const before = weighedBefore(screen, { load, round });
  const beforeDensity = before ? meanDensityOf(before.cups) : null;
  const says = judgeBowl(batch, screen, { cups, before: beforeDensity });
  const size = cups.at(-1);

  const putCup = () => {
    if (!typed) return;
    if (typed.tinOf === '') rememberCup({ cupMl: draft.cupMl, tare: draft.tare });
    take({ cups: JSON.stringify([...kept, typed]), gross: '', unwhipped: '' });
  };
  async function enter(goes: 'on' | 'stop', sure: string[] = []) {
    if (!looked) return;
    setGoes(goes);
    if (typed && typed.tinOf === '') rememberCup({ cupMl: draft.cupMl, tare: draft.tare });
    const body = {
      ...{ position: screen.position, load, round, looked, goes, cups, sure },
      minutes: minutesSince(timer.begunAt, stoodAt),
      celsius: typedDecimalOrNull(draft.celsius),
      remark: '',
    };
    onSent?.('sent');
    const entered = await save.write({ params: { id: batch.id }, body });
    onSent?.(entered ? 'entered' : 'refused');
    if (!entered) return;
    markStood(timer, null);
    forget();
  }
  return (
    <Form label={words.look} problems={asked.length > 0 ? [] : save.problems} onSubmit={putCup}>
      <p className={styles.word}>{words.look}</p>
      <p>{words.unplug}</p>
      <fieldset>
        <legend className={styles.legend}>{words.looked}</legend>
        <div className={styles.taps}>
          {LOOKS.map(([look, name]) => (
            <AriaButton
              key={look}
              className={styles.tap ?? ''}
              aria-pressed={look === looked}
              data-selected={look === looked || undefined}
              onPress={() => set('looked')(look)}
            >
              <LookPicture look={look} />
              <span>{name}</span>
            </AriaButton>
          ))}
        </div>
      </fieldset>
      <p aria-live="polite">{looked ? stepWords.lookSays[looked] : words.lookFirst}</p>
      {says.found.length > 0 && (
        <AirSays
          {...says}
          cup={size && { cupMl: exact(size.cupMl).toNumber(), tareGrams: exact(size.tareGrams).toNumber() }}
        />
      )}
      {kept.length > 0 && (
        <ul className={styles.rounds}>
          {kept
            .map((cup, index) => ({ cup, number: index + 1 }))
            .map(({ cup, number }) => (
              <li key={number}>
                <span>{sayCup(cup)}</span>
                <Button
                  isBench
                  onPress={() => take({ cups: JSON.stringify(kept.filter((each) => each !== cup)) })}
                >
                  {stepWords.cup.takeOff}
                </Button>
              </li>
            ))}
        </ul>
      )}
      {isOpen.cup && (
        <>
          <CupPad
            draft={draft}
            set={set}
            take={take}
            tins={screen.tins}
            isBusy={save.isBusy}
            at={`cups[${kept.length}]`}
          />
          <Button type="submit" isBench isDisabled={!typed}>
            {stepWords.cup.another}
          </Button>
        </>
      )}
      {isOpen.heat && (
        <NumberPad
          fields={[{ name: 'celsius', label: makingWords.celsius, where: 'celsius', unit: '°C' }]}
          values={draft}
          set={set}
          isBusy={save.isBusy}
        />
      )}
      <div className={styles.loadsRow}>
        {!isOpen.cup && (
          <Button isBench onPress={() => setOpen({ ...isOpen, cup: true })}>
            {stepWords.cup.add}
          </Button>
        )}
        {!isOpen.heat && (
          <Button isBench onPress={() => setOpen({ ...isOpen, heat: true })}>
            {makingWords.celsius}
          </Button>
        )}
      </div>
      <CupQuestion
        asked={asked}
        onSure={() => void enter(goes, [...new Set(asked.map(({ code }) => code))])}
        onClose={save.forget}
      />
      <div className={styles.pair}>
        <Button isBench isWide isBusy={save.isBusy} isDisabled={!looked} onPress={() => void enter('on')}>
          {words.goOn}
        </Button>
        <Button
          isAct
          isBench
          isWide
          isBusy={save.isBusy}
          isDisabled={!looked}
          onPress={() => void enter('stop')}
        >
          {words.stop}
        </Button>
      </div>
    </Form>
  );
}

function sayCup(cup: steps.FullCup): string {
  const density = sayNumber(densitiesOf([cup])[0]?.toNumber() ?? 0, 3);
  return cup.tinOf === '' ? stepWords.cup.ofCup(density) : stepWords.cup.ofTin(cup.tinOf, density);
}
