import type { ContentfulStatusCode } from 'hono/utils/http-status';
import type { Problem } from '../core/problem.ts';
import { sayProblem } from '../words/index.ts';

const STATUS: Readonly<Record<string, ContentfulStatusCode>> = {
  'thing-not-found': 404,
  'route-unknown': 404,
  'calculation-unknown': 404,
  'page-missing': 404,
  'changed-meanwhile': 409,
  'stamp-used-otherwise': 409,
  'body-too-large': 413,
  'body-not-json': 415,
  'host-foreign': 403,
  'origin-foreign': 403,
  'our-mistake': 500,
  'disk-trouble': 500,
  'file-torn': 500,
  'file-not-writable': 500,
  'disk-full': 507,
};

/** What was asked could not be read (400) or was read and refused (422): some codes have a status of their own. Moments are said in this zone. */
export function answerProblems(
  problems: readonly Problem[],
  otherwise: 400 | 422,
  timeZone?: string,
): Response {
  const status = problems.map(({ code }) => STATUS[code]).find((known) => known !== undefined) ?? otherwise;
  const body = {
    problems: problems.map((problem) => ({ ...problem, ...sayProblem(problem, { timeZone }) })),
  };
  return Response.json(body, { status });
}
