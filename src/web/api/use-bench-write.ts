import { useQueryClient } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import type { RouteName, Stamp } from '../../contract/index.ts';
import { type Problem, problem } from '../../core/problem.ts';
import { askedHere } from '../away/is-reached.ts';
import type { KeptEntry } from '../away/kept-entry.ts';
import { enterAtBench, isSilent, onTablet } from '../away/outbox.ts';
import { ownEntries } from '../away/own-entries.ts';
import { stampNow } from './make-stamp.ts';
import { problemsOf } from './problems-of.ts';
import type { WriteOf } from './shapes.ts';
import type { UnderWay } from './unsaved.ts';
import type { Write } from './use-write.ts';

/** The entry stands at the workshop, or is kept on this tablet until it does: the bench goes on in both cases. */
export interface BenchAnswer {
  readonly isOnTabletOnly: boolean;
}

/** What the workshop would ask about the entry, as far as it can be known here. */
export type JudgeHere<Name extends RouteName> = (request: WriteOf<Name>) => readonly Problem[];

export interface BenchWrite<Name extends RouteName> extends Omit<Write<Name>, 'write'> {
  /**
   * Answers undefined where it was refused: `problems` then says why. The answer holds nothing of the batch: the bench
   * shows the batch that it is given, in which the entry stands already.
   */
  readonly write: (request: WriteOf<Name>) => Promise<BenchAnswer | undefined>;
}

const NONE: readonly Problem[] = [];
/** The amounts that they change are worked out at the workshop: without its answer nobody here knows what to weigh. */
const ONLY_THERE: ReadonlySet<string> = new Set<RouteName>(['resizeBatch']);
const KEPT: BenchAnswer = { isOnTabletOnly: true };
const ENTERED: BenchAnswer = { isOnTabletOnly: false };

/**
 * A write from the bench: kept on this tablet first, then sent; where nobody answers it stays here, and goes in order
 * and with its own time once the workshop is there again. `judge` asks here what only the workshop could ask else.
 */
export function useBenchWrite<Name extends RouteName>(
  name: Name,
  { judge }: { readonly judge?: JudgeHere<Name> } = {},
): BenchWrite<Name> {
  const queryClient = useQueryClient();
  const [problems, setProblems] = useState(NONE);
  const [isBusy, setBusy] = useState(false);
  /** Pressed twice counts once; the state is a moment too late for a quick thumb. */
  const sending = useRef<Promise<boolean>>(undefined);
  const [underWay] = useState((): UnderWay => () => sending.current);

  async function write(request: WriteOf<Name>): Promise<BenchAnswer | undefined> {
    if (sending.current) return undefined;
    setProblems(NONE);
    setBusy(true);
    const written = send(request);
    sending.current = written.then((answer) => answer !== undefined);
    try {
      return await written;
    } finally {
      sending.current = undefined;
      setBusy(false);
    }
  }

  async function send(request: WriteOf<Name>): Promise<BenchAnswer | undefined> {
    try {
      const asked = await askedHere(judge?.(request) ?? NONE);
      if (asked.length > 0) return refuse(asked);
      const needsAnswer = ONLY_THERE.has(name);
      if (needsAnswer && (isSilent() || onTablet.read().waiting.length > 0))
        return refuse([problem('workshop-needed', 'workshop')]);
      const entered = await enterAtBench(entryOf(name, request, await stampNow()));
      if (entered.how === 'kept')
        return needsAnswer ? refuse([problem('answer-outstanding', 'workshop')]) : KEPT;
      // What a refusal was about may have changed under the page: it shows how things stand now.
      if (entered.how === 'refused') void queryClient.invalidateQueries();
      else await queryClient.invalidateQueries();
      return entered.how === 'answered' ? ENTERED : refuse(entered.problems);
    } catch (error) {
      return refuse(problemsOf(error));
    }
  }

  function refuse(found: readonly Problem[]): undefined {
    setProblems(found);
    return undefined;
  }
  return { write, isBusy, underWay, problems, refuse: setProblems, forget: () => setProblems(NONE) };
}

function entryOf<Name extends RouteName>(
  route: Name,
  { params = {}, body }: WriteOf<Name>,
  stamp: Stamp,
): Omit<KeptEntry, 'state' | 'tab' | 'until'> {
  // Of a strike the batch tells what was struck, and not by which entry.
  if ('entryId' in (body as object)) ownEntries.add(`struck ${(body as { entryId: string }).entryId}`);
  return { id: stamp.id, route, params, body: { ...(body as object), stamp }, at: stamp.at };
}
