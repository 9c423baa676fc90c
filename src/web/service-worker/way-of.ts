/** What becomes of a request of our pages; `pass`: nothing, the browser sends it as if we were not there. */
export type Way = 'page' | 'hashed' | 'file' | 'known' | 'picture' | 'pass';

export interface Asked {
  readonly method: string;
  readonly url: string;
  readonly mode: string;
}

const ID = '[A-Za-z0-9-]{1,64}';
/**
 * What the bench needs to go on: the workshop with its people and scales, batches and filling runs.
 * Nothing else is kept on a tablet: neither customers nor prices nor what is sold.
 */
const KNOWN: readonly RegExp[] = [
  /^\/api\/workshop$/,
  new RegExp(`^/api/batches(/${ID})?$`),
  new RegExp(`^/api/filling-runs(/${ID})?$`),
];

/** Where photographs of steps come from; papers lie there too, and are not kept: the answer tells which it is. */
const PICTURE = new RegExp(`^/api/attachments/${ID}/file$`);

/** How a request is answered: pages and reads of the bench also while the workshop is silent. */
export function wayOf({ method, url, mode }: Asked, origin: string): Way {
  const { pathname, origin: asked, search } = new URL(url);
  if (method !== 'GET' || asked !== origin) return 'pass';
  if (pathname.startsWith('/api')) {
    // Whoever opens a paper in a tab of its own is told by the browser that nobody answers.
    if (mode === 'navigate' || search !== '') return 'pass';
    if (PICTURE.test(pathname)) return 'picture';
    return KNOWN.some((known) => known.test(pathname)) ? 'known' : 'pass';
  }
  if (mode === 'navigate') return 'page';
  return pathname.startsWith('/assets/') ? 'hashed' : 'file';
}
