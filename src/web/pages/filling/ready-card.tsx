import { useState } from 'react';
import { readyWords } from '../../../words/index.ts';
import type { BodyOf } from '../../api/shapes.ts';
import { useBenchWrite } from '../../api/use-bench-write.ts';
import { Card } from '../../parts/card.tsx';
import { Problems } from '../../parts/problems.tsx';
import { ReadyArea } from './ready-area.tsx';
import { ReadyContainers } from './ready-containers.tsx';
import { ReadyIssued } from './ready-issued.tsx';
import type { Run } from './run.ts';

export type ReadyWord = BodyOf<'prepareRun'>['word'];
export type ReadyKind = ReadyWord['kind'];

export interface AskProps {
  readonly run: Run;
  readonly isBusy: boolean;
  readonly onSay: (word: ReadyWord) => void;
  /** Absent: this one cannot wait. */
  readonly onLater?: () => void;
}

const ASKED: readonly ReadyKind[] = ['area', 'containers', 'issued'];
const NONE: readonly ReadyKind[] = [];

/** What is asked next before the first tin; null: all is said, or put off. The clear bench cannot be put off for sale. */
export const nextReady = (run: Run, later: readonly ReadyKind[]): ReadyKind | null =>
  ASKED.find(
    (kind) =>
      run.ready[kind] === null && (!later.includes(kind) || (kind === 'area' && run.purpose === 'sale')),
  ) ?? null;

/** One question a screen, each one tap: is the bench clear, how were the tins cleaned, how many lie here. */
export function useReady(run: Run) {
  const [later, setLater] = useState(NONE);
  const [again, setAgain] = useState<ReadyKind | null>(null);
  const isBegun = run.weights.length > 0;
  const next = nextReady(run, isBegun ? ASKED : later);
  const kind = again ?? next;
  const put = (word: ReadyKind) => setLater([...later, word]);
  return { kind, again: setAgain, later: put };
}

interface Props {
  readonly run: Run;
  readonly kind: ReadyKind;
  readonly onSaid: () => void;
  readonly onLater: (kind: ReadyKind) => void;
}

export function ReadyCard({ run, kind, onSaid, onLater }: Props) {
  const prepare = useBenchWrite('prepareRun');
  async function say(word: ReadyWord) {
    if (await prepare.write({ params: { id: run.id }, body: { word } })) onSaid();
  }
  const asked: AskProps = {
    run,
    isBusy: prepare.isBusy,
    onSay: (word) => void say(word),
    ...(kind === 'area' && run.purpose === 'sale' ? {} : { onLater: () => onLater(kind) }),
  };
  return (
    <Card title={readyWords.title}>
      <Problems problems={prepare.problems} />
      {kind === 'area' && <ReadyArea {...asked} />}
      {kind === 'containers' && <ReadyContainers {...asked} />}
      {kind === 'issued' && <ReadyIssued {...asked} />}
    </Card>
  );
}
