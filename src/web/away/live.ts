import { call } from '../api/call.ts';
import { queryClient } from '../api/query-client.ts';
import { onTablet } from './outbox.ts';
import { ownEntries } from './own-entries.ts';
import { sendNow } from './replay.ts';
import { isTouchedBy, type LiveEvent } from './touched-by.ts';

/** Writes of one moment are asked for together; well within a second (common practice, no source). */
const TOGETHER_MS = 120;
/** Where the stream was refused it is asked for again, each time after twice as long. */
const FIRST_MS = 2_000;
const LONGEST_MS = 60_000;

let stream: EventSource | undefined;
let again: ReturnType<typeof setTimeout> | undefined;
let waitMs = FIRST_MS;
let wasLost = false;

let gathered: LiveEvent[] = [];

function askAnew(): void {
  const events = gathered;
  gathered = [];
  void queryClient.invalidateQueries({
    predicate: ({ queryKey }) => events.some((event) => isTouchedBy(event, queryKey)),
  });
}

function gather(event: LiveEvent): void {
  if (ownEntries.has(event.entryId)) return;
  if (gathered.length === 0) setTimeout(askAnew, TOGETHER_MS);
  gathered.push(event);
}

/** What was written while nobody told us is asked for at once, and what lies here goes. */
function reached(): void {
  waitMs = FIRST_MS;
  if (wasLost) void queryClient.invalidateQueries();
  wasLost = false;
  if (onTablet.read().waiting.length > 0) sendNow();
}

/** The browser tries again by itself after silence, and not after a refusal. The health of the workshop tells which. */
function lost(): void {
  if (!wasLost) void call('getHealth').catch(() => undefined);
  wasLost = true;
  if (stream?.readyState !== EventSource.CLOSED) return;
  close();
  again = setTimeout(follow, waitMs);
  waitMs = Math.min(waitMs * 2, LONGEST_MS);
}

function follow(): void {
  if (stream || document.visibilityState === 'hidden') return;
  stream = new EventSource('/api/live');
  stream.onopen = reached;
  stream.onerror = lost;
  stream.onmessage = ({ data }) => gather(JSON.parse(data) as LiveEvent);
}

function close(): void {
  clearTimeout(again);
  stream?.close();
  stream = undefined;
}

/**
 * Follows what others write while the page is in sight: browsers keep six connections to one server, and a page that
 * nobody looks at must not hold one of them. Looked at again, it asks for everything anew.
 */
export function startLive(): void {
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') return follow();
    close();
    wasLost = true;
  });
  follow();
}
