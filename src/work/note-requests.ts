import type { RouteName } from '../contract/index.ts';
import { keyedHash, readPinKey } from '../machine/index.ts';
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

/**
 * Their bodies hold a PIN. Its few digits could be tried until the request's hash fits, so that what stands for it hangs on
 * a key outside the file.
 */
const SECRET: Readonly<Record<string, readonly string[]>> = {
  setPin: ['pin'],
  changeOwnPin: ['oldPin', 'pin'],
  unlockPerson: ['pin'],
} satisfies Partial<Record<RouteName, readonly string[]>>;

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
export function noteRequest({ machine, storage, asker }: Context, name: string, request: unknown): Asked {
  const secret = SECRET[name];
  const hidden = secret ? hide(request, secret, storage.file) : request;
  return {
    text: canonicalJson([name, asker ? withoutDevice(hidden) : hidden]),
    salt: HOLDS_CUSTOMERS_TEXT.has(name) ? machine.newId() : null,
  };
}

interface Noted {
  readonly body?: Readonly<Record<string, unknown>>;
}

/**
 * The server says by which name a paired device goes. It may have got another since an entry was sent first, and the
 * entry, sent again, is the same all the same.
 */
function withoutDevice(request: unknown): unknown {
  const { body, ...rest } = request as Noted;
  if (typeof body?.stamp !== 'object') return request;
  return { ...rest, body: { ...body, stamp: { ...body.stamp, device: '' } } };
}

function hide(request: unknown, secret: readonly string[], file: string): unknown {
  const { body = {}, ...rest } = request as Noted;
  const hidden = Object.entries(body).map(([field, value]) => [
    field,
    secret.includes(field) && typeof value === 'string' ? keyedHash(value, readPinKey(file)) : value,
  ]);
  return { ...rest, body: Object.fromEntries(hidden) };
}
