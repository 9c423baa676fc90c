import type { Context as HonoContext, MiddlewareHandler } from 'hono';
import { type Problem, problem } from '../core/problem.ts';
import { answerProblems } from './answer.ts';

const NAMES = ['127.0.0.1', 'localhost', '[::1]'];

/** By which names with their port this door is asked for, and over what. */
export interface OwnNames {
  readonly scheme: 'http' | 'https';
  readonly hosts: () => readonly string[];
}

export const ownComputer = (port: () => number): OwnNames => ({
  scheme: 'http',
  hosts: () => NAMES.map((name) => `${name}:${port()}`),
});

/**
 * Answers only who asked for this computer by its own name, from a page of this server or from no page at all.
 * The Host check stops another site whose name was made to point here (DNS rebinding), the Origin check one that posts.
 * What the browser itself says of the page that asks (Fetch Metadata, W3C) stops the same once more, and a program on
 * another port of this computer, which cookies do not tell apart.
 */
export function guardOrigin({ scheme, hosts }: OwnNames): MiddlewareHandler {
  return async (http, next) => {
    const host = (http.req.header('host') ?? '').toLowerCase();
    const allowed = hosts();
    if (!allowed.includes(host)) {
      const found = http.req.header('host') ?? '';
      return answerProblems([problem('host-foreign', 'host', { found, allowed: allowed.join(', ') })], 400);
    }
    const foreign = foreignOrigin(http, `${scheme}://${host}`) ?? foreignSite(http);
    return foreign === undefined ? next() : answerProblems([foreign], 400);
  };
}

function foreignOrigin({ req }: HonoContext, own: string): Problem | undefined {
  const origin = req.header('origin');
  if (origin === undefined || origin === own) return undefined;
  return problem('origin-foreign', 'origin', { found: origin, allowed: own });
}

/** Absent from older browsers and from programs: the Origin was looked at already. */
function foreignSite({ req }: HonoContext): Problem | undefined {
  const site = req.header('sec-fetch-site');
  const isRead = req.method === 'GET' || req.method === 'HEAD';
  const isForeign = isRead
    ? req.path.startsWith('/api') && (site === 'cross-site' || site === 'same-site')
    : site !== undefined && site !== 'same-origin';
  return isForeign ? problem('site-foreign', 'sec-fetch-site', { found: site ?? '' }) : undefined;
}
