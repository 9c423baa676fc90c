import { useState } from 'react';
import type { Problem } from '../../core/problem.ts';
import { awayWords, sayProblem } from '../../words/index.ts';
import { problemsOf } from '../api/problems-of.ts';
import { useRead } from '../api/use-read.ts';
import { useStore } from '../api/use-store.ts';
import { Button } from '../parts/button.tsx';
import { Problems } from '../parts/problems.tsx';
import { shutDoor } from './door.ts';
import styles from './held-entries.module.css';
import type { HeldEntry } from './make-outbox.ts';
import { handOver, heldHere, replayOutbox } from './outbox.ts';

const NONE: readonly Problem[] = [];

/** Entries that the others went past: whose PIN they wait for, or why the workshop will not have them, and the ways out. */
export function HeldEntries() {
  const held = useStore(heldHere);
  if (held.length === 0) return null;
  return (
    <section className={styles.held} aria-label={awayWords.held.title}>
      {held.map((one) => (
        <HeldOne key={one.entry.id} held={one} />
      ))}
    </section>
  );
}

function HeldOne({ held }: { readonly held: HeldEntry }) {
  const people = useRead('getWorkshop').data?.people ?? [];
  const [problems, setProblems] = useState(NONE);
  const [isBusy, setBusy] = useState(false);
  const name = people.find(({ id }) => id === held.entry.body.stamp.by)?.name ?? awayWords.held.somebody;
  const isLocked = shutDoor(held.problems) === 'person-locked';
  async function act(work: () => Promise<void>) {
    setBusy(true);
    try {
      await work();
    } catch (error) {
      setProblems(problemsOf(error));
    } finally {
      setBusy(false);
    }
  }
  const [first] = held.problems;
  return (
    <div className={styles.one}>
      <p>
        {isLocked
          ? awayWords.held.locked(name)
          : awayWords.held.refused(name, first ? sayProblem(first).says : '')}
      </p>
      <Button isBusy={isBusy} onPress={() => void act(replayOutbox)}>
        {awayWords.held.again}
      </Button>
      <Button isBusy={isBusy} onPress={() => void act(() => handOver(held))}>
        {awayWords.held.handIn(name)}
      </Button>
      <Problems problems={problems} />
    </div>
  );
}
