/** One name for all tabs of this browser. */
const LOCK = 'gramwright.outbox';

/**
 * Runs one piece of work after the other, in all tabs of this browser where it has locks (Web Locks API), else in this
 * tab: what two tabs then send twice counts once at the workshop, by its stamp.
 */
export function makeRunAlone(locks: LockManager | undefined): <T>(work: () => Promise<T>) => Promise<T> {
  if (locks) return (work) => locks.request(LOCK, work);
  let last: Promise<unknown> = Promise.resolve();
  return (work) => {
    const next = last.then(work, work);
    last = next.catch(() => undefined);
    return next;
  };
}
