import { type Route, type RouteName, routes } from '../contract/index.ts';

/**
 * What somebody decides about a whole batch or run: decided by who stands there now, never because a tablet once sent it.
 * And what is only asked, or printed.
 */
const NOT_LATE: ReadonlySet<string> = new Set<RouteName>([
  'finishBatch',
  'abandonBatch',
  'decideWorstCase',
  'closeRun',
  'releaseRun',
  'offerResize',
  'printRunLabels',
  'countLabels',
]);

/** What was done at the bench, by the address that it is sent to. */
const AT_THE_BENCH = /^\/api\/(batches|filling-runs)\/:id\/./;

/** Whether what a tablet did while it was away may be entered after all. */
export function mayBeEnteredLate(name: string): boolean {
  const route = (routes as Readonly<Record<string, Route>>)[name];
  return route?.method === 'POST' && AT_THE_BENCH.test(route.path) && !NOT_LATE.has(name);
}
