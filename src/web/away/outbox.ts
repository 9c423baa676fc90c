import { problem } from '../../core/problem.ts';
import { ApiProblem } from '../api/api-problem.ts';
import { call } from '../api/call.ts';
import { connection } from '../api/connection.ts';
import { makeId } from '../api/make-id.ts';
import { makeStore } from '../api/make-store.ts';
import { queryClient } from '../api/query-client.ts';
import type { RequestOf } from '../api/shapes.ts';
import { clockAhead, FAR_BEHIND_MS } from './clock.ts';
import { handIn, keepClaim } from './keep-claim.ts';
import type { KeptEntry } from './kept-entry.ts';
import { type HeldEntry, makeOutbox } from './make-outbox.ts';
import { makeMemoryStore } from './memory-store.ts';
import { type OutboxStore, openOutboxStore } from './outbox-store.ts';
import { ownEntries } from './own-entries.ts';
import { ANSWER_MS, PATIENCE_MS } from './patience.ts';
import { makeRunAlone } from './run-alone.ts';
import { noteSent } from './sent-entries.ts';

/** What lies on this tablet. */
export interface OnTablet {
  /** Not at the workshop yet, in order. */
  readonly waiting: readonly KeptEntry[];
  /** false: the browser gives no database, and what waits is lost with the page. */
  readonly isLasting: boolean;
}

export const onTablet = makeStore<OnTablet>({ waiting: [], isLasting: true });
/** What others go past: it waits for somebody's PIN, or the workshop will not have it. */
export const heldHere = makeStore<readonly HeldEntry[]>([]);
/** Something is on its way at this moment. */
export const isSending = makeStore(false);

let opening: Promise<OutboxStore> | undefined;
const store = (): Promise<OutboxStore> => {
  const openAnew = () => {
    opening = undefined;
  };
  opening ??= openOutboxStore(undefined, openAnew).catch(() => {
    onTablet.write({ ...onTablet.read(), isLasting: false });
    return makeMemoryStore();
  });
  return opening;
};

const channel =
  typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('gramwright.outbox');

async function readAnew(): Promise<void> {
  const waiting = await (await store()).list();
  for (const { id } of waiting) ownEntries.add(id);
  onTablet.write({ ...onTablet.read(), waiting });
}

function showAsSent(entry: KeptEntry): void {
  noteSent(entry);
  const now = onTablet.read();
  onTablet.write({ ...now, waiting: now.waiting.filter(({ id }) => id !== entry.id) });
}

/** An answer that does not come in time is silence: the entry may have arrived, and goes again with its stamp. */
async function send({ route, params, body, at }: KeptEntry): Promise<unknown> {
  refuseFarBehind(at);
  return call(route, { params, body } as RequestOf<typeof route>, AbortSignal.timeout(ANSWER_MS));
}

/** The workshop believes whatever lies back: a clock that is far behind is asked about from here. */
function refuseFarBehind(at: string): void {
  const behind = -clockAhead.read();
  if (behind <= FAR_BEHIND_MS) return;
  const allowed = new Date(Date.parse(at) + behind).toISOString();
  throw new ApiProblem([problem('tablet-clock-behind', 'stamp.at', { found: at, allowed })], true);
}

const outbox = makeOutbox({
  store,
  send,
  claim: keepClaim,
  alone: makeRunAlone(typeof navigator === 'undefined' ? undefined : navigator.locks),
  tab: makeId(),
  now: () => Date.now(),
  wait: (ms) => new Promise((resolve) => setTimeout(() => resolve(undefined), ms)),
  patienceMs: PATIENCE_MS,
  onHeld: heldHere.write,
  onChange(sent) {
    if (sent) showAsSent(sent);
    void readAnew();
    channel?.postMessage('changed');
  },
});

/** Reads what an earlier visit left, and follows what other tabs do. */
export function openOutbox(): Promise<void> {
  if (channel) channel.onmessage = () => void readAnew();
  return readAnew();
}

export async function replayOutbox(): Promise<void> {
  const before = onTablet.read().waiting.length;
  isSending.write(before > 0);
  try {
    await outbox.replay();
  } finally {
    isSending.write(false);
    await readAnew();
  }
  if (onTablet.read().waiting.length < before) await queryClient.invalidateQueries();
}

/** Hands in, as a question, what its own maker cannot send from here any more. */
export async function handOver({ entry, problems }: HeldEntry): Promise<void> {
  await handIn(entry, problems);
  await (await store()).remove(entry.id);
  channel?.postMessage('changed');
  await replayOutbox();
}

export async function enterAtBench(entry: Omit<KeptEntry, 'state' | 'tab' | 'until'>) {
  void navigator.storage?.persist?.();
  isSending.write(true);
  try {
    return await outbox.enter(entry);
  } catch (error) {
    if (error instanceof DOMException)
      throw new ApiProblem([problem('tablet-keeps-nothing', 'tablet', { found: error.name })], true);
    throw error;
  } finally {
    isSending.write(false);
  }
}

/** Whether it is known that nobody answers. */
export const isSilent = (): boolean => connection.read() === 'silent';
