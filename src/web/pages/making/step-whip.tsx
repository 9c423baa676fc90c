import { useState } from 'react';
import { sayNumber, stepWords } from '../../../words/index.ts';
import { workshopNow } from '../../away/clock.ts';
import { Button } from '../../parts/button.tsx';
import { Problems } from '../../parts/problems.tsx';
import { type RunningTimer, timerOf } from './list-timers.ts';
import { countLoads, LoadsCard } from './loads-card.tsx';
import { RoundLength } from './round-length.tsx';
import { StepForm } from './step-form.tsx';
import type { StepProps } from './step-props.ts';
import { markStood, readStood } from './stood-marks.ts';
import { StrikeStep } from './strike-step.tsx';
import { TimerFace } from './timer-face.tsx';
import { useBegin } from './use-begin.ts';
import { useNow } from './use-now.ts';
import { useStepEntry } from './use-step-entry.ts';
import { WhipLook } from './whip-look.tsx';
import { WhipRounds } from './whip-rounds.tsx';
import { whipStateOf } from './whip-state.ts';

const { whip: words } = stepWords;

/** Whipped in timed rounds, each looked at: scrape, look, go on or stop. */
export function StepWhip(props: StepProps) {
  const { batch, screen } = props;
  const state = whipStateOf(screen);
  const loads = countLoads(batch, screen);
  return (
    <>
      <p>
        <strong>{words.loadOf(state.load, loads ?? 1)}</strong>
        {state.phase !== 'whipped' && `, ${words.roundOf(state.round, screen.rounds)}`}
      </p>
      {state.phase === 'ready' && <Ready {...props} load={state.load} round={state.round} />}
      {state.phase === 'running' && <Running {...props} load={state.load} round={state.round} />}
      {state.phase === 'whipped' && <Whipped {...props} load={state.load} loads={loads} />}
      <LoadsCard batch={batch} screen={screen} load={state.load} />
      <WhipRounds batch={batch} screen={screen} />
    </>
  );
}

interface RoundProps extends StepProps {
  readonly load: number;
  readonly round: number;
}

/** The round may begin: how long, and a tap. */
function Ready({ load, round, ...props }: RoundProps) {
  const { screen } = props;
  const { begin, save } = useBegin(props);
  const [minutes, setMinutes] = useState(() => screen.begun.at(-1)?.minutes ?? screen.roundMinutes ?? '');
  const isOwn = minutes !== (screen.roundMinutes ?? '');
  return (
    <>
      <RoundLength value={minutes} onChange={setMinutes} />
      <Problems problems={save.problems} />
      <Button
        isAct
        isBench
        isWide
        isBusy={save.isBusy}
        onPress={() => void begin({ load, round, minutes: isOwn && minutes !== '' ? minutes : null })}
      >
        {words.beginRound(round)}
      </Button>
    </>
  );
}

/** It runs; when time is up, or before, the machine stands and somebody looks. */
function Running({ load, round, ...props }: RoundProps) {
  const { batch, screen } = props;
  const [, setStood] = useState<number>();
  const now = useNow();
  const timer = timerOf(screen);
  if (!timer) return null;
  const isLooking = readStood(timer) !== undefined;
  function stand(running: RunningTimer) {
    const at = workshopNow();
    markStood(running, at);
    setStood(at);
  }
  const isOver = timer.endsAt !== null && now >= timer.endsAt;
  return (
    <>
      {!isLooking && <TimerFace timer={timer} />}
      {!isLooking && !isOver ? (
        <Button isBench isWide onPress={() => stand(timer)}>
          {words.stopLook}
        </Button>
      ) : (
        <WhipLook
          key={`${load}.${round}`}
          batch={batch}
          screen={screen}
          load={load}
          round={round}
          timer={timer}
          onSent={props.onSent}
        />
      )}
      <StrikeStep
        batch={batch}
        entryId={timer.key}
        word={stepWords.begunWrongly}
        title={stepWords.strikeBegun}
      />
    </>
  );
}

interface WhippedProps extends StepProps {
  readonly load: number;
  readonly loads: number | null;
}

/** A load is whipped: the next one, or all of it is done. */
function Whipped({ load, loads, ...props }: WhippedProps) {
  const { screen, doneWord } = props;
  const entry = useStepEntry(props);
  const { begin, save } = useBegin(props);
  const isMore = loads !== null && load < loads;
  const minutes = totalMinutes(screen.whipped.map((each) => each.minutes));
  const next = (
    <Button
      isAct={isMore}
      isBench
      isWide={isMore}
      isBusy={save.isBusy}
      onPress={() => void begin({ load: load + 1, round: 1 })}
    >
      {words.nextLoad}
    </Button>
  );
  return (
    <>
      {minutes !== null && <p>{words.whippedFor(minutes)}</p>}
      <Problems problems={save.problems} />
      {isMore && next}
      <StepForm
        label={screen.what}
        entry={entry}
        doneWord={words.allWhipped(doneWord)}
        isEarly={isMore}
        parts={() => ({ minutes })}
      />
      {!isMore && <div>{next}</div>}
    </>
  );
}

function totalMinutes(minutes: readonly (string | null)[]): string | null {
  const known = minutes.flatMap((each) => (each === null ? [] : [Number(each)]));
  return known.length === 0
    ? null
    : sayNumber(Math.round(known.reduce((sum, each) => sum + each, 0) * 10) / 10, 1);
}
