import { type ReactNode, useState } from 'react';
import { makingWords } from '../../../words/index.ts';
import type { Step } from './batch.ts';
import styles from './bench.module.css';
import { CautionList } from './caution-list.tsx';
import { holdScreen, type SentScreen } from './hold-screen.ts';
import { StepCool } from './step-cool.tsx';
import { StepCover } from './step-cover.tsx';
import { StepCup } from './step-cup.tsx';
import { StepDone } from './step-done.tsx';
import { StepHold } from './step-hold.tsx';
import { StepMelt } from './step-melt.tsx';
import { StepMix } from './step-mix.tsx';
import { StepOther } from './step-other.tsx';
import { StepPhotos } from './step-photos.tsx';
import type { StepProps } from './step-props.ts';
import { StepSet } from './step-set.tsx';
import { StepWeigh } from './step-weigh.tsx';
import { StepWhip } from './step-whip.tsx';
import { StruckEntries } from './struck-entries.tsx';

const KINDS: Readonly<Record<Step['stepKind'], (props: StepProps) => ReactNode>> = {
  melt: StepMelt,
  hold: StepHold,
  cool: StepCool,
  mix: StepMix,
  cover: StepCover,
  set: StepSet,
  whip: StepWhip,
  weigh: StepWeigh,
  cup: StepCup,
  other: StepOther,
};

/** One step of the method, on the screen of its kind. */
export function StepScreen(props: StepProps) {
  const { batch, all } = props;
  const [sent, setSent] = useState<SentScreen>();
  const held = holdScreen(sent, props.screen);
  if (held !== sent) setSent(held);
  const screen = held?.screen ?? props.screen;
  const Kind = KINDS[screen.stepKind];
  return (
    <div className={styles.screen}>
      <p className="soft">
        {makingWords.stepOf(screen.screen + 1, all)}. {screen.stage}.
      </p>
      <CautionList screen={screen} />
      {screen.done ? (
        <StepDone batch={batch} screen={screen} done={screen.done} />
      ) : (
        <Kind
          {...props}
          screen={screen}
          onSent={(how) => setSent(how === 'entered' ? undefined : { screen, isRefused: how === 'refused' })}
        />
      )}
      <StepPhotos batch={batch} screen={screen} />
      <StruckEntries batch={batch} screen={screen.screen} />
    </div>
  );
}
