import { type Route, type RouteName, routes } from '../contract/index.ts';

/**
 * What somebody decides about a whole batch or run: decided by who stands there now, never because a tablet once sent it;
 * a resize goes by what was in when it was shown. And what is only asked, or printed.
 */
const NOT_LATE: ReadonlySet<string> = new Set<RouteName>([
  'finishBatch',
  'finishWithoutRecipe',
  'resizeBatch',
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

/** Done there too, and kept with the workshop: a lot that ran out while it was weighed, the scale's check of the day. */
const OF_THE_WORKSHOP: ReadonlySet<string> = new Set<RouteName>(['countLot', 'recordScaleCheck']);

/** Whether what a tablet did while it was away may be entered after all. */
export function mayBeEnteredLate(name: string): boolean {
  const route = (routes as Readonly<Record<string, Route>>)[name];
  if (route?.method !== 'POST' || NOT_LATE.has(name)) return false;
  return AT_THE_BENCH.test(route.path) || OF_THE_WORKSHOP.has(name);
}
