import type { MiddlewareHandler } from 'hono';
import { problem } from '../core/problem.ts';
import { answerProblems } from './answer.ts';

const NAMES = ['127.0.0.1', 'localhost', '[::1]'];

/**
 * Answers only who asked for this computer by its own name, from a page of this server or from no page at all.
 * The Host check stops another site whose name was made to point here (DNS rebinding), the Origin check one that posts.
 */
export function guardOrigin(port: () => number): MiddlewareHandler {
  return async (http, next) => {
    const host = http.req.header('host') ?? '';
    const allowed = NAMES.map((name) => `${name}:${port()}`);
    if (!allowed.includes(host)) {
      return answerProblems(
        [problem('host-foreign', 'host', { found: host, allowed: allowed.join(', ') })],
        400,
      );
    }
    const origin = http.req.header('origin');
    if (origin !== undefined && origin !== `http://${host}`) {
      return answerProblems(
        [problem('origin-foreign', 'origin', { found: origin, allowed: `http://${host}` })],
        400,
      );
    }
    return next();
  };
}
