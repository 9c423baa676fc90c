import type { Context as HonoContext } from 'hono';
import { z } from 'zod';
import { fields, type Route } from '../contract/index.ts';
import { done, type Problem, problem, type Result, refused } from '../core/problem.ts';
import { problemsFromSchema } from '../core/problems-from-schema.ts';

export interface ReadRequest {
  readonly params: Readonly<Record<string, string>>;
  readonly query: unknown;
  readonly body: unknown;
}

/** Every parameter of a path is an id or a name. */
const pathParams = z.record(z.string(), fields.id);

/** Reads path, query and body by the contract's shapes; every fault of all three is named at once. */
export async function readRequest(http: HonoContext, route: Route): Promise<Result<ReadRequest>> {
  const body = route.input ? await readJson(http) : done(undefined);
  if (!body.ok) return body;
  const problems: Problem[] = [];
  const read = (shape: z.ZodType | undefined, given: unknown): unknown => {
    const result = shape?.safeParse(given);
    if (result && !result.success) problems.push(...problemsFromSchema(result.error, given));
    return result?.data;
  };
  const params = read(pathParams, http.req.param()) as Record<string, string>;
  const query = read(route.query, http.req.query());
  const input = read(route.input, body.value);
  return problems.length > 0 ? refused(...problems) : done({ params, query, body: input });
}

/** JSON only: a form of another site cannot send it without asking first. */
async function readJson(http: HonoContext): Promise<Result<unknown>> {
  const type = http.req.header('content-type') ?? '';
  if (!/^application\/json\s*(;|$)/i.test(type)) {
    return refused(problem('body-not-json', 'content-type', { found: type, allowed: 'application/json' }));
  }
  const text = await http.req.text();
  try {
    return done(JSON.parse(text));
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return refused(problem('json-broken', 'body', { found: error.message }));
  }
}
