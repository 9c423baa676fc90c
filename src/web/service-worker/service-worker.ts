import { networkFirst } from './network-first.ts';
import { wayOf } from './way-of.ts';

/**
 * The pages without the workshop: their files, and what the bench was last told. Written into the build: every file of
 * it, and a digest of them all. Nothing is sent from here: entries lie in the outbox of the page.
 */
declare const __FILES__: readonly string[];
declare const __VERSION__: string;

/** The few things of a service worker that are used here (Service Workers, W3C); the page's own types know none. */
interface Waiting extends Event {
  waitUntil(work: Promise<unknown>): void;
}
interface Fetching extends Waiting {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}
interface Scope {
  readonly location: Location;
  readonly clients: {
    claim(): Promise<void>;
    matchAll(which: { type: 'window'; includeUncontrolled: boolean }): Promise<readonly unknown[]>;
  };
  skipWaiting(): Promise<void>;
  addEventListener(kind: 'install' | 'activate' | 'message', does: (event: Waiting) => void): void;
  addEventListener(kind: 'fetch', does: (event: Fetching) => void): void;
}

const scope = globalThis as unknown as Scope;
const FILES = `gramwright-files-${__VERSION__}`;
/** Goes with the version: a page must not read answers of a shape that it does not know. */
const KNOWN = `gramwright-known-${__VERSION__}`;
const SHELL = '/index.html';
/** Shorter than anybody waits before they take the tablet for broken (common practice, no source). */
const PATIENCE_MS = 2_500;
/** Pictures of steps lie by themselves: they are many, and must not push out what the bench works with. */
const PICTURES = `gramwright-pictures-${__VERSION__}`;
/** So many are kept of each; the oldest go first. */
const MOST_KEPT = 120;

const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

scope.addEventListener('install', (event) => {
  const all = __FILES__.map((file) => new Request(file, { cache: 'reload' }));
  event.waitUntil(caches.open(FILES).then((cache) => cache.addAll(all)));
});

const OWN: readonly string[] = [FILES, KNOWN, PICTURES];

/** Older versions and what they were told are of no use to the pages of this one. */
async function clearOthers(): Promise<void> {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith('gramwright-') && !OWN.includes(name));
  await Promise.all(old.map((name) => caches.delete(name)));
  await scope.clients.claim();
}
scope.addEventListener('activate', (event) => event.waitUntil(clearOthers()));

/** A page has been loaded anew: it takes the new version, unless another one still needs the files of the old. */
async function takeOver(): Promise<void> {
  const pages = await scope.clients.matchAll({ type: 'window', includeUncontrolled: true });
  if (pages.length <= 1) await scope.skipWaiting();
}
scope.addEventListener('message', (event) => event.waitUntil(takeOver()));

const keptFile = async (path: string): Promise<Response | undefined> =>
  (await caches.open(FILES)).match(path);

/** From the workshop where it answers in time, so that a new version is seen at once; else the one that is here. */
async function fromNetworkOrFiles(request: Request, path: string): Promise<Response> {
  const silence = wait(PATIENCE_MS).then(() => undefined);
  const asked = fetch(request);
  const first = await Promise.race([asked.catch(() => undefined), silence]);
  return first ?? (await keptFile(path)) ?? asked;
}

const fromFilesOrNetwork = async (request: Request): Promise<Response> =>
  (await keptFile(new URL(request.url).pathname)) ?? fetch(request);

const isPicture = (answer: Response): boolean =>
  answer.headers.get('content-type')?.startsWith('image/') === true;

async function keep(name: string, url: string, answer: Response): Promise<void> {
  const cache = await caches.open(name);
  // Put anew it stands last.
  await cache.delete(url);
  await cache.put(url, answer);
  const all = await cache.keys();
  await Promise.all(all.slice(0, -MOST_KEPT).map((old) => cache.delete(old)));
}

/** Of what lies where photographs do, papers are nobody's to keep. */
const writeTo =
  (name: string, url: string) =>
  async (answer: Response): Promise<void> => {
    if (name === KNOWN || isPicture(answer)) await keep(name, url, answer);
  };

const known = (
  name: string,
  { request }: Fetching,
  outlive: (work: Promise<unknown>) => void,
): Promise<Response> =>
  networkFirst({
    ask: () => fetch(request),
    kept: {
      read: async () => (await caches.open(name)).match(request.url),
      write: writeTo(name, request.url),
    },
    wait,
    patienceMs: PATIENCE_MS,
    now: () => new Date().toISOString(),
    outlive,
  });

scope.addEventListener('fetch', (event) => {
  const { request } = event;
  const way = wayOf(request, scope.location.origin);
  if (way === 'page') event.respondWith(fromNetworkOrFiles(request, SHELL));
  if (way === 'file') event.respondWith(fromNetworkOrFiles(request, new URL(request.url).pathname));
  if (way === 'hashed') event.respondWith(fromFilesOrNetwork(request));
  if (way === 'known') event.respondWith(known(KNOWN, event, (work) => event.waitUntil(work)));
  if (way === 'picture') event.respondWith(known(PICTURES, event, (work) => event.waitUntil(work)));
});
