import { Hono, type Context as HonoContext } from 'hono';
import { runCalculation } from '../catalogue/index.ts';
import { type Route, type RouteName, routes } from '../contract/index.ts';
import { done, problem, type Result } from '../core/problem.ts';
import {
  type Context,
  type OpenUseCases,
  type Paper,
  problemOfFailure,
  type WorkRoute,
  workshopZone,
} from '../work/index.ts';
import { addPairing } from './add-pairing.ts';
import { answerProblems, answerProblemsAsPage } from './answer.ts';
import { listCalculations } from './calculations.ts';
import { deviceCookie, readDeviceCookie } from './device-cookie.ts';
import { askerOf, type Gate, nameDevice, recogniseAsker, whyNotFromNetwork, whyNotSigned } from './gate.ts';
import { guardOrigin, ownComputer } from './guard-origin.ts';
import { limitBody } from './limit-body.ts';
import { type Live, makeLive } from './live.ts';
import type { Log } from './log.ts';
import { describeApi } from './open-api.ts';
import { type ReadRequest, readRequest } from './read-request.ts';
import { securityHeaders } from './security-headers.ts';
import { serveWebFiles } from './web-files.ts';

export interface AppWish {
  readonly context: Context;
  readonly useCases: Partial<OpenUseCases<WorkRoute>>;
  readonly version: string;
  readonly webFolder: string;
  /** Known once it listens. */
  readonly port: () => number;
  readonly log: Log;
  /** In front of devices from the network; without it everybody who asks sits at this computer. */
  readonly gate?: Gate;
  /** Whoever closes the server ends the streams first. */
  readonly live?: Live;
}

type Handler = (context: Context, request: ReadRequest) => Promise<Result<unknown>>;

export function createApp(wish: AppWish): Hono {
  const app = new Hono();
  app.use(securityHeaders);
  const { gate } = wish;
  app.use(guardOrigin(gate ? { scheme: 'https', hosts: gate.hosts } : ownComputer(wish.port)));
  if (gate) app.use('/api/*', recogniseAsker(wish.context, gate));
  app.use('/api/*', limitBody);
  app.get('/api/openapi.json', () => Response.json(describeApi(wish.version)));
  for (const [name, handle] of Object.entries(handlersOf(wish)))
    addRoute(app, name as RouteName, handle, wish);
  addPairing(app, wish.context);
  const live = wish.live ?? makeLive(wish.context);
  app.get('/api/live', (http) => live.answer(http));
  app.all('/api', unknownRoute);
  app.all('/api/*', unknownRoute);
  app.get('*', serveWebFiles(wish.webFolder));
  app.notFound(unknownRoute);
  app.onError((error, http) => answerFailure(error, http, wish));
  return app;
}

/** The shapes of the contract were read before a use-case is called, which is what makes this widening true. */
const handlersOf = ({ useCases, version }: AppWish): Record<string, Handler> => ({
  ...(useCases as unknown as Record<string, Handler>),
  listCalculations: async () => listCalculations(),
  calculate: async (_context, { params, body }) => runCalculation(params.name ?? '', body),
  getHealth: async ({ storage }) => done({ version, schema: storage.schemaVersion }),
});

function addRoute(app: Hono, name: RouteName, handle: Handler, { context }: AppWish): void {
  const route: Route = routes[name];
  app.on(route.method, route.path, async (http) => {
    const asker = askerOf(http);
    const zone = () => workshopZone(context);
    const refuse = isOpenedAsPage(route, http) ? answerProblemsAsPage : answerProblems;
    const closed = whyNotFromNetwork(route, asker);
    if (closed) return refuse([closed], 400);
    const request = await readRequest(http, route);
    if (!request.ok) return refuse(request.problems, 400, await zone());
    const unsigned = await whyNotSigned(context, name, asker, request.value);
    if (unsigned) return refuse([unsigned], 400);
    const result = await handle(asker ? { ...context, asker } : context, nameDevice(request.value, asker));
    if (!result.ok) return refuse(result.problems, name === 'calculate' ? 400 : 422, await zone());
    return route.media
      ? answerPaper(result.value as Paper, route.media)
      : Response.json(result.value, {
          status: madeSomething(route, request.value.body) ? 201 : 200,
          headers: cookieAgain(http, name),
        });
  });
}

/** A device that opens the pages has its cookie for another 400 days. */
function cookieAgain(http: HonoContext, name: RouteName): Record<string, string> {
  const token = name === 'getDoor' && askerOf(http)?.device ? readDeviceCookie(http) : undefined;
  return token === undefined ? {} : { 'set-cookie': deviceCookie(token) };
}

/** A paper whose address somebody opened in a browser's tab; a program asks for what the contract says. */
const isOpenedAsPage = ({ media }: Route, http: HonoContext): boolean =>
  media !== undefined && (http.req.header('accept') ?? '').includes('text/html');

/** A write to a list, without the id of something that was there already. */
const madeSomething = (route: Route, body: unknown): boolean =>
  route.method === 'POST' &&
  !route.path.includes(':') &&
  typeof body === 'object' &&
  body !== null &&
  'stamp' in body &&
  !('id' in body);

function answerPaper({ fileName, bytes, media: own }: Paper, usual: string): Response {
  const media = own ?? usual;
  const how = media === 'application/zip' ? 'attachment' : 'inline';
  const plain = fileName.replace(/[^\w.-]/g, '_');
  const disposition = `${how}; filename="${plain}"; filename*=UTF-8''${encodeURIComponent(fileName)}`;
  return new Response(Buffer.from(bytes), {
    headers: { 'content-type': media, 'content-disposition': disposition },
  });
}

const unknownRoute = (http: HonoContext): Response =>
  answerProblems([problem('route-unknown', http.req.path, { found: http.req.method })], 400);

/** A full disk is told as such; anything else is a mistake of ours: logged with its cause, and said calmly. */
function answerFailure(error: Error, http: HonoContext, { context, log }: AppWish): Response {
  const known = problemOfFailure(context, error);
  log.error({ err: error, method: http.req.method, path: http.req.path }, known?.code ?? 'our-mistake');
  return answerProblems([known ?? problem('our-mistake', http.req.path)], 422);
}
