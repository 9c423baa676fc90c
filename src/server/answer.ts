import type { ContentfulStatusCode } from 'hono/utils/http-status';
import type { Problem } from '../core/problem.ts';
import { partWords, sayProblem } from '../words/index.ts';

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
  'site-foreign': 403,
  'only-at-the-computer': 403,
  'only-on-a-device': 403,
  'device-not-paired': 401,
  'person-locked': 401,
  'pin-wait': 429,
  'pin-locked': 429,
  'pairing-locked': 429,
  'our-mistake': 500,
  'disk-trouble': 500,
  'file-torn': 500,
  'file-not-writable': 500,
  'too-many-streams': 503,
  'disk-full': 507,
};

/** What was asked could not be read (400) or was read and refused (422): some codes have a status of their own. Moments are said in this zone. */
export function answerProblems(
  problems: readonly Problem[],
  otherwise: 400 | 422,
  timeZone?: string,
): Response {
  const body = {
    problems: problems.map((problem) => ({ ...problem, ...sayProblem(problem, { timeZone }) })),
  };
  return Response.json(body, { status: statusOf(problems, otherwise) });
}

const statusOf = (problems: readonly Problem[], otherwise: ContentfulStatusCode): ContentfulStatusCode =>
  problems.map(({ code }) => STATUS[code]).find((known) => known !== undefined) ?? otherwise;

/** The same for a paper that somebody opened in a tab of its own: a page that can be read. */
export function answerProblemsAsPage(
  problems: readonly Problem[],
  otherwise: 400 | 422,
  timeZone?: string,
): Response {
  const { title, back } = partWords.noPaper;
  const said = problems.map((problem) => {
    const { says, mend } = sayProblem(problem, { timeZone });
    return `<p>${escapeHtml(`${says} ${mend}`)}</p>`;
  });
  const page = `<!doctype html>
<html lang="en-GB">
<head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${title}</title></head>
<body><h1>${title}</h1>${said.join('')}<p><a href="/">${back}</a></p></body>
</html>
`;
  return new Response(page, {
    status: statusOf(problems, otherwise),
    headers: { 'content-type': 'text/html; charset=utf-8' },
  });
}

/** What was typed somewhere stands in a sentence: it must stay text. */
const escapeHtml = (text: string): string =>
  text.replace(/[&<>"']/g, (character) => `&#${character.charCodeAt(0)};`);
