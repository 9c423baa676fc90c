import type { IncomingMessage } from 'node:http';
import type { Socket } from 'node:net';
import type { Context as HonoContext, MiddlewareHandler } from 'hono';
import type { Route, RouteName, Stamp } from '../contract/index.ts';
import { routes } from '../contract/index.ts';
import { type Problem, problem } from '../core/problem.ts';
import { type Asker, type Context, mayBeSigned, recogniseDevice } from '../work/index.ts';
import { answerProblems } from './answer.ts';
import { readDeviceCookie } from './device-cookie.ts';
import type { ReadRequest } from './read-request.ts';

/** What the listener of the network knows and the pages' application needs. */
export interface Gate {
  readonly hosts: () => readonly string[];
  /** A device asked over this connection: it is ended when the device is dropped. */
  readonly noteSocket: (deviceId: string, socket: Socket) => void;
}

const ASKER = 'asker';

/** Who asks from the network; nothing where the request was made at this computer. */
export const askerOf = (http: HonoContext): Asker | undefined => http.get(ASKER) as Asker | undefined;

const OPEN_TO_ANYONE: ReadonlySet<string> = new Set(
  Object.values(routes as Record<string, Route>)
    .filter(({ openTo }) => openTo === 'anyone')
    .map(({ method, path }) => `${method} ${path}`),
);

/** From the network only paired devices are answered, before anything of the request is read. */
export function recogniseAsker(context: Context, gate: Gate): MiddlewareHandler {
  return async (http, next) => {
    const device = await recogniseDevice(context, readDeviceCookie(http));
    if (device === null && !OPEN_TO_ANYONE.has(`${http.req.method} ${http.req.path}`))
      return answerProblems([problem('device-not-paired', 'device')], 400);
    const { incoming } = (http.env ?? {}) as { readonly incoming?: IncomingMessage };
    if (device !== null && incoming) gate.noteSocket(device.id, incoming.socket);
    http.set(ASKER, { device } satisfies Asker);
    return next();
  };
}

/** What is done at the workshop's own computer only. */
export const whyNotFromNetwork = ({ openTo }: Route, asker: Asker | undefined): Problem | undefined =>
  asker && openTo === 'own-computer' ? problem('only-at-the-computer', 'device') : undefined;

/** They ask for the PIN themselves, or take a right away instead of using it. */
const BEFORE_UNLOCKING: ReadonlySet<string> = new Set<RouteName>([
  'unlockPerson',
  'lockPerson',
  'changeOwnPin',
]);

type Stamped = { readonly stamp: Stamp };
const isStamped = (body: unknown): body is Stamped =>
  typeof body === 'object' && body !== null && 'stamp' in body;

/** Every entry from a device is signed by somebody who entered their PIN there. */
export async function whyNotSigned(
  context: Context,
  name: RouteName,
  asker: Asker | undefined,
  { body }: ReadRequest,
): Promise<Problem | undefined> {
  if (!asker?.device || !isStamped(body) || BEFORE_UNLOCKING.has(name)) return undefined;
  const { by } = body.stamp;
  if (await mayBeSigned(context, asker.device.id, by)) return undefined;
  return problem('person-locked', 'stamp.by', { found: by });
}

/** A device goes by the name that the owner gave it, whatever it calls itself. */
export function nameDevice(request: ReadRequest, asker: Asker | undefined): ReadRequest {
  const { body } = request;
  if (!asker?.device || !isStamped(body)) return request;
  return { ...request, body: { ...body, stamp: { ...body.stamp, device: asker.device.name } } };
}
