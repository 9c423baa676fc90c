import { useEffect, useMemo, useState } from 'react';
import type { Problem } from '../../../core/problem.ts';
import { exact, readDecimal, roundToStep, toText } from '../../../core/quantity/index.ts';
import { fillingWords, lightWords, sayDecimal } from '../../../words/index.ts';
import { useBenchWrite } from '../../api/use-bench-write.ts';
import { useKeptDraft } from '../../api/use-kept-draft.ts';
import { Button } from '../../parts/button.tsx';
import { Form } from '../../parts/form.tsx';
import { KeyPad } from '../../parts/key-pad.tsx';
import { typedDecimal } from '../../show/typed-decimal.ts';
import bench from '../making/bench.module.css';
import { Dock } from '../making/dock.tsx';
import { ScaleField } from '../making/scale-field.tsx';
import { whyNotWeighed } from '../making/weight-verdict.ts';
import { FillQuestion } from './fill-question.tsx';
import { FillVerdict } from './fill-verdict.tsx';
import { askEmptyHere, askHere, isQuestion, nextNumber, type TinNow, takenOff } from './judge-here.ts';
import { LastTin } from './last-tin.tsx';
import { isTin, type Run } from './run.ts';

const EMPTY = { gross: '', tare: '', refill: '', isTareDone: '', isTareSure: '' };
const NOTHING: readonly string[] = [];

/** One tin after another: what to aim at in large digits, the verdict while it stands on the scale, and keys. */
export function FillPad({ run }: { readonly run: Run }) {
  const { draft, set, take, forget } = useKeptDraft(`filling.${run.id}`, EMPTY);
  const record = useBenchWrite('recordFill');
  const [sure, setSure] = useState(NOTHING);
  const [asked, setAsked] = useState<Problem>();
  const refill = run.weights.find((each) => each.entryId === draft.refill && isTin(each)) ?? null;
  const now: TinNow = { gross: draft.gross, tare: draft.tare, refill };
  const isOwn = run.way === 'own' && refill === null;
  const isTareNow = isOwn && draft.isTareDone === '';
  const told = useMemo(() => record.problems.filter((each) => !isQuestion(each)), [record.problems]);
  useEffect(() => {
    const question = record.problems.find(isQuestion);
    if (question) setAsked(question);
  }, [record.problems]);

  const tareSure = draft.isTareSure === '' ? NOTHING : ['tare-unlike'];
  async function send(given: readonly string[], isNet = false) {
    const answers = [...tareSure, ...given];
    const question = isNet ? undefined : askHere(run, now, answers)[0];
    if (question && isQuestion(question)) return setAsked(question);
    if (question) return record.refuse([question]);
    const kept = await record.write({
      params: { id: run.id },
      body: {
        grossGrams: typedDecimal(draft.gross),
        tareGrams: isNet ? '0' : isOwn ? typedDecimal(draft.tare) : null,
        refillOf: refill?.entryId ?? null,
        sure: [...answers],
      },
    });
    if (!kept) return undefined;
    setSure(NOTHING);
    forget();
    return undefined;
  }
  function enter() {
    if (isTareNow) {
      if (whyNotWeighed(draft.tare)) return;
      const odd = askEmptyHere(run, draft.tare);
      if (odd) setAsked(odd);
      else set('isTareDone')('yes');
      return;
    }
    if (draft.gross === '' || whyNotWeighed(draft.gross)) return;
    setSure(NOTHING);
    void send(NOTHING);
  }
  function answer() {
    if (!asked) return;
    if (isTareNow) {
      setAsked(undefined);
      take({ isTareSure: 'yes', isTareDone: 'yes' });
      return;
    }
    const answers = [...sure, asked.code];
    setSure(answers);
    setAsked(undefined);
    record.forget();
    void send(answers);
  }
  const typed = isTareNow ? draft.tare : draft.gross;
  const type = set(isTareNow ? 'tare' : 'gross');
  const number = refill?.number ?? nextNumber(run);
  return (
    <>
      <Form isSaidWithin label={fillingWords.enter} problems={told} onSubmit={enter}>
        <Dock>
          <LastTin
            run={run}
            refill={refill}
            onRefill={(weight) => take({ ...EMPTY, refill: weight?.entryId ?? '' })}
          />
          <div className={bench.figures}>
            <AimDigits run={run} now={now} isTareNow={isTareNow} />
            <ScaleField
              key={isTareNow ? 'empty' : 'full'}
              label={isTareNow ? lightWords.emptyOf(number) : lightWords.fullOf(number)}
              where={isTareNow ? 'tareGrams' : 'grossGrams'}
              value={typed}
              onChange={type}
              isBusy={record.isBusy}
            />
          </div>
          {!isTareNow && <FillVerdict run={run} now={now} />}
          <KeyPad value={typed} onChange={type} isBusy={record.isBusy} />
          <Button type="submit" isAct isBench isWide isBusy={record.isBusy} isDisabled={typed === ''}>
            {isTareNow ? lightWords.keepEmpty : fillingWords.enter}
          </Button>
        </Dock>
      </Form>
      <FillQuestion
        asked={asked}
        onSure={answer}
        {...(asked?.code === 'scale-was-tared' && {
          other: lightWords.wasTared,
          onOther: () => {
            setAsked(undefined);
            record.forget();
            void send(['tare-unlike'], true);
          },
        })}
        {...(isTareNow && { sure: lightWords.sureEmpty })}
        onClose={() => {
          setAsked(undefined);
          record.forget();
        }}
      />
    </>
  );
}

interface AimProps {
  readonly run: Run;
  readonly now: TinNow;
  readonly isTareNow: boolean;
}

/** Where the hand of the scale should come to: the aim with what is taken off this tin. */
function AimDigits({ run, now, isTareNow }: AimProps) {
  const read = readDecimal(takenOff(run, now), 'tareGrams');
  const isKnown = !isTareNow && read.ok;
  const sum = isKnown ? exact(run.aimGrams).plus(read.value) : exact(run.aimGrams);
  // A mean of empty tins is finer than the scale shows; taken up, so that nobody aims short.
  const aim = roundToStep(sum, run.scale.readabilityGrams, 'up');
  return (
    <div>
      <p className="soft">{isKnown && !read.value.isZero() ? fillingWords.aim : fillingWords.aimNet}</p>
      <p className={bench.digits}>
        {sayDecimal(toText(aim))}
        <small>g</small>
      </p>
    </div>
  );
}
