import { connection } from '../api/connection.ts';
import { onTablet, openOutbox, replayOutbox } from './outbox.ts';

/** After silence it is asked again after 2 seconds, then after twice as long each time (common practice, no source). */
const FIRST_MS = 2_000;
const LONGEST_MS = 30_000;

let waitMs = FIRST_MS;
let timer: ReturnType<typeof setTimeout> | undefined;

async function send(): Promise<void> {
  clearTimeout(timer);
  timer = undefined;
  const before = onTablet.read().waiting.length;
  if (before === 0) return;
  try {
    await replayOutbox();
  } finally {
    const left = onTablet.read().waiting.length;
    waitMs = left < before ? FIRST_MS : Math.min(waitMs * 2, LONGEST_MS);
    if (left > 0) timer = setTimeout(sendNow, waitMs);
  }
}

/** Something changed that may let them through: whoever comes back must not wait for the slowest round. */
export function sendNow(): void {
  void send();
}

const sendSoon = (): void => {
  waitMs = FIRST_MS;
  sendNow();
};

/** Sends what an earlier visit left on this tablet, and from now on whenever the workshop may be there again. */
export async function startReplaying(): Promise<void> {
  await openOutbox();
  addEventListener('online', sendSoon);
  addEventListener('visibilitychange', () => document.visibilityState === 'visible' && sendSoon());
  connection.watch(() => connection.read() === 'answers' && sendSoon());
  onTablet.watch(() => {
    if (timer === undefined && onTablet.read().waiting.length > 0) timer = setTimeout(sendNow, FIRST_MS);
  });
  sendSoon();
}
