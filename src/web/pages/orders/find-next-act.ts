import type { Order } from './order.ts';

type Step = Order['promise']['steps'][number];

/**
 * The next thing that can be done for an order: send it where all of it stands there, put other tins aside where some
 * may not go any more, else what has to happen first.
 */
export function findNextAct({
  promise: { steps, tinsReady },
}: Pick<Order, 'promise'>): 'send' | 'keep' | NonNullable<Step['action']> | null {
  const [first] = steps;
  if (!first) return tinsReady > 0 ? 'send' : null;
  if (first.what.code === 'order-step-keep-others') return 'keep';
  return steps.find(({ action }) => action !== null)?.action ?? null;
}
