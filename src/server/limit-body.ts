import type { Context as HonoContext, MiddlewareHandler } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { routes } from '../contract/index.ts';
import { problem } from '../core/problem.ts';
import { answerProblems } from './answer.ts';

const MEGABYTE = 1024 * 1024;
/** A few kilobytes each, but for what the table of routes says. */
const USUALLY = 1;

const patternOf = (path: string): RegExp => new RegExp(`^${path.replace(/:\w+/g, '[^/]+')}$`);
const LARGER = Object.values(routes).flatMap(({ path, largestBodyMegabytes: most }) =>
  most === undefined ? [] : [{ pattern: patternOf(path), most }],
);

const largestMegabytes = (path: string): number =>
  LARGER.find(({ pattern }) => pattern.test(path))?.most ?? USUALLY;

/**
 * A body of a stated length is judged by it: no more than that is read (RFC 9112, section 6.3). Only one of no stated
 * length is counted as it comes, for which it has to be read twice.
 */
export const limitBody: MiddlewareHandler = async (http, next) => {
  const maxSize = largestMegabytes(http.req.path) * MEGABYTE;
  const refuse = () =>
    answerProblems([problem('body-too-large', 'body', { allowed: maxSize / MEGABYTE })], 400);
  const length = statedLength(http);
  if (length === undefined) return bodyLimit({ maxSize, onError: refuse })(http, next);
  return length > maxSize ? refuse() : next();
};

function statedLength({ req }: HonoContext): number | undefined {
  const stated = req.header('content-length');
  return stated === undefined || req.header('transfer-encoding') !== undefined ? undefined : Number(stated);
}
