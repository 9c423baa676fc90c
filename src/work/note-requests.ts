import type { RouteName } from '../contract/index.ts';
import { type Asked, canonicalJson } from '../storage/index.ts';
import type { Context } from './context.ts';
import type { OpenUseCases, UseCases } from './use-case.ts';

/** Their bodies hold what a customer may ask to be erased: names, addresses, notes, tracking numbers. */
const HOLDS_CUSTOMERS_TEXT: ReadonlySet<string> = new Set<RouteName>([
  'saveCustomer',
  'saveOrder',
  'cancelOrder',
  'dispatchOrder',
  'saveTracking',
]);

type Carry = (context: object, request: unknown) => unknown;

/**
 * Notes for every use-case what it was asked: the route, its parameters and the whole body as they came. Done in one
 * place, on the way in, so that no use-case can leave anything out.
 */
export function noteRequests<Names extends RouteName>(useCases: UseCases<Names>): OpenUseCases<Names> {
  const noting = (name: string, carryOut: Carry) => (context: Context, request: unknown) =>
    carryOut({ ...context, asked: (): Asked => noteRequest(context, name, request) }, request);
  const entries = Object.entries(useCases as unknown as Record<string, Carry>);
  return Object.fromEntries(
    entries.map(([name, carryOut]) => [name, noting(name, carryOut)]),
  ) as unknown as OpenUseCases<Names>;
}

/** For a use-case that carries another one out as part of itself, too. */
export const noteRequest = ({ machine }: Context, name: string, request: unknown): Asked => ({
  text: canonicalJson([name, request]),
  salt: HOLDS_CUSTOMERS_TEXT.has(name) ? machine.newId() : null,
});
