import { createHash } from 'node:crypto';
import { fingerprintOf } from '../machine/index.ts';
import { reachGuide } from '../words/index.ts';
import type { WayIn } from '../work/index.ts';

const STYLE = `body{font:18px/1.5 system-ui,sans-serif;max-width:40rem;margin:2rem auto;padding:0 1rem;color:#1b2421;background:#f7f3ea}
code{font-size:1.1rem;overflow-wrap:anywhere}
a.get{display:inline-block;padding:1rem 1.4rem;background:#1e6648;color:#fff;border-radius:6px;font-weight:600}
li{margin:.4rem 0}summary{padding:.7rem 0;font-weight:600}`;
const STYLE_HASH = createHash('sha256').update(STYLE).digest('base64');
const HEADERS = {
  'content-security-policy': `default-src 'none'; style-src 'sha256-${STYLE_HASH}'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'`,
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
  'referrer-policy': 'no-referrer',
  'cache-control': 'no-store',
};

/**
 * What a device without any trust yet is given over plain http while a pairing is open: the authority's certificate, its
 * fingerprint to compare, and how to trust it. Nothing of the workshop, and nothing is taken in.
 */
export function answerHint(request: Request, authority: string | null, ways: readonly WayIn[]): Response {
  const { pathname, hostname } = new URL(request.url);
  const isOurs = ways.some(({ address }) => address === hostname.toLowerCase());
  const isRead = request.method === 'GET' || request.method === 'HEAD';
  if (authority === null || !isOurs || !isRead) return notHere();
  if (pathname === '/authority.crt')
    return new Response(authority, {
      headers: {
        ...HEADERS,
        'content-type': 'application/x-x509-ca-cert',
        'content-disposition': 'attachment; filename="gramwright-workshop.crt"',
      },
    });
  return pathname === '/' ? page(authority, ways) : notHere();
}

const notHere = (): Response => new Response(reachGuide.hint.notHere, { status: 404, headers: HEADERS });

function page(authority: string, ways: readonly WayIn[]): Response {
  const { hint, title, check, devices } = reachGuide;
  const url = escapeHtml(ways[0]?.url ?? '');
  const guides = devices
    .map(
      ({ name, steps }) =>
        `<details><summary>${escapeHtml(name)}</summary><ol>${steps.map((step) => `<li>${escapeHtml(step)}</li>`).join('')}</ol></details>`,
    )
    .join('');
  const body = `<!doctype html>
<html lang="en-GB"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${title}</title><style>${STYLE}</style></head>
<body><h1>${title}</h1><p>${hint.why}</p>
<p><a class="get" href="/authority.crt">${hint.get}</a></p>
<p>${check}</p><p>${hint.notThis}</p><p><code>${fingerprintOf(authority)}</code></p>
${guides}
<p>${hint.goOn} <a href="${url}/pair">${url}/pair</a></p></body></html>
`;
  return new Response(body, { headers: { ...HEADERS, 'content-type': 'text/html; charset=utf-8' } });
}

const escapeHtml = (text: string): string =>
  text.replace(/[&<>"']/g, (character) => `&#${character.charCodeAt(0)};`);
