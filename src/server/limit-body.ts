import type { Context as HonoContext, MiddlewareHandler } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { problem } from '../core/problem.ts';
import { answerProblems } from './answer.ts';

const MEGABYTE = 1024 * 1024;
/** An assessor's report with pictures, in base64; everything else is a few kilobytes. */
const LARGEST = { report: 30 * MEGABYTE, other: MEGABYTE };

/** Where a PDF comes in: with a report, and under a heading of a product's file. */
const HOLDS_FILE = /^\/api\/(reports\/[^/]+\/file|products\/[^/]+\/attachments)$/;

/**
 * A body of a stated length is judged by it: no more than that is read (RFC 9112, section 6.3). Only one of no stated
 * length is counted as it comes, for which it has to be read twice.
 */
export const limitBody: MiddlewareHandler = async (http, next) => {
  const maxSize = HOLDS_FILE.test(http.req.path) ? LARGEST.report : LARGEST.other;
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
