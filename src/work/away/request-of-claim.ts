import type { z } from 'zod';
import { away, type Route, routes, type Stamp } from '../../contract/index.ts';
import { done, type Problem, problem, type Result, refused } from '../../core/problem.ts';
import { problemsFromSchema } from '../../core/problems-from-schema.ts';
import type { ClaimRow } from '../../storage/index.ts';

type Body = Readonly<Record<string, unknown>>;

/** A request as a tablet kept it. */
export interface KeptRequest {
  readonly params: Readonly<Record<string, string>>;
  readonly body: Body;
}

export const requestOf = ({ request }: Pick<ClaimRow, 'request'>): KeptRequest =>
  JSON.parse(request) as KeptRequest;

const routeOf = (name: string): Route | undefined => (routes as Readonly<Record<string, Route>>)[name];

/** What it is about, by the address that it was sent to: a batch, a filling run, or the workshop. */
export function subjectOf(
  route: string,
  params: Readonly<Record<string, string>>,
): { readonly kind: 'batch' | 'filling-run' | 'workshop'; readonly id: string } {
  const path = routeOf(route)?.path ?? '';
  if (path.startsWith('/api/batches/:id/')) return { kind: 'batch', id: params.id ?? '' };
  if (path.startsWith('/api/filling-runs/:id/')) return { kind: 'filling-run', id: params.id ?? '' };
  return { kind: 'workshop', id: '' };
}

export interface Explained {
  readonly what: string;
  readonly why: string;
  readonly at: string | null;
  readonly by: string;
  readonly device: string;
  /** Codes of the questions that whoever answers said yes to. */
  readonly sure: readonly string[];
}

/** The request with the explanation in the place that the route has for it, read by the contract's shape. */
export function explainRequest(
  route: string,
  { params, body }: KeptRequest,
  { what, why, at, by, device, sure }: Explained,
): Result<{ readonly params: KeptRequest['params']; readonly body: unknown; readonly query: undefined }> {
  const shape = routeOf(route)?.input as z.ZodObject | undefined;
  const fields = Object.keys(shape?.shape ?? {});
  const given = {
    ...body,
    ...sayYes(body, fields, sure),
    ...(fields.includes('deviation') ? { deviation: { what, why } } : {}),
    stamp: { ...(body.stamp as Stamp), by, device, ...(at === null ? {} : { at }) },
  };
  const read = shape?.safeParse(given);
  if (read?.success) return done({ params, body: read.data, query: undefined });
  return refused(...(read ? problemsFromSchema(read.error, given) : [notEnterable(route)]));
}

/** What the tablet said yes to stays said. */
function sayYes(body: Body, fields: readonly string[], sure: readonly string[]): Body {
  const ofField = (field: string) => sure.filter((code) => away.benchQuestions.get(code)?.includes(field));
  const answers = fields
    .filter((field) => ofField(field).length > 0)
    .map((field) => {
      if (field !== 'sure') return [field, true];
      const before = Array.isArray(body.sure) ? (body.sure as unknown[]) : [];
      return [field, [...new Set([...before, ...ofField(field)])]];
    });
  return Object.fromEntries(answers);
}

export const notEnterable = (route: string): Problem =>
  problem('claim-not-enterable', 'how', { found: route });
