import { useState } from 'react';
import type { Problem } from '../../../core/problem.ts';
import { readyWords } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { readWhole } from '../../show/read-whole.ts';
import type { AskProps } from './ready-card.tsx';

const NONE: readonly Problem[] = [];

/** How many tins, lids and labels lie on the bench: as many as are wanted, unless somebody counts otherwise. */
export function ReadyIssued({ run, isBusy, onSay, onLater }: AskProps) {
  const wanted = String(run.wanted);
  const { parts } = run;
  const [tins, setTins] = useState(wanted);
  const [lids, setLids] = useState(wanted);
  const [labels, setLabels] = useState(run.labelsPrinted > 0 ? String(run.labelsPrinted) : wanted);
  const [problems, setProblems] = useState(NONE);
  function submit() {
    const counted = [
      readWhole(tins, 'word.tins'),
      ...(parts.hasLid ? [readWhole(lids, 'word.lids')] : []),
      ...(parts.hasLabel ? [readWhole(labels, 'word.labels')] : []),
    ];
    const wrong = counted.flatMap((each) => (each.ok ? [] : each.problems));
    setProblems(wrong);
    if (wrong.length > 0) return;
    const count = (has: boolean, typed: string) => (has ? Number(typed.replace(/\s/g, '')) : null);
    onSay({
      kind: 'issued',
      tins: count(true, tins) ?? 0,
      lids: count(parts.hasLid, lids),
      labels: count(parts.hasLabel, labels),
    });
  }
  const field = (label: string, where: string, value: string, onChange: (typed: string) => void) => (
    <Field label={label} where={where} kind="whole" value={value} onChange={onChange} isBench />
  );
  return (
    <Form label={readyWords.issuedTitle} problems={problems} onSubmit={submit}>
      <h3>{readyWords.issuedTitle}</h3>
      <p>{readyWords.issuedSays}</p>
      <SideBySide>
        {field(readyWords.tins, 'word.tins', tins, setTins)}
        {parts.hasLid && field(readyWords.lids, 'word.lids', lids, setLids)}
        {parts.hasLabel && field(readyWords.labels, 'word.labels', labels, setLabels)}
      </SideBySide>
      <Button type="submit" isAct isBench isWide isBusy={isBusy}>
        {readyWords.issuedSend}
      </Button>
      {onLater && (
        <Button isBench onPress={onLater}>
          {readyWords.later}
        </Button>
      )}
    </Form>
  );
}
