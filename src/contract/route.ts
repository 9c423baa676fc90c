import type { z } from 'zod';

/** One row of the table of routes: server, command line and pages all take method, path and shapes from here. */
export interface Route<
  Input extends z.ZodType = z.ZodType,
  Output extends z.ZodType = z.ZodType,
  Query extends z.ZodType = z.ZodType,
> {
  readonly method: 'GET' | 'POST' | 'PUT';
  /** Hono's spelling: `/api/orders/:id`. Every parameter is an id or a name. */
  readonly path: string;
  readonly summary: string;
  /** Body of a POST or PUT. */
  readonly input?: Input;
  readonly query?: Query;
  readonly output: Output;
  /** What comes back where it is not JSON. */
  readonly media?: 'application/pdf' | 'application/zip' | 'image/svg+xml';
}

export const route = <Input extends z.ZodType, Output extends z.ZodType, Query extends z.ZodType>(
  row: Route<Input, Output, Query>,
): Route<Input, Output, Query> => row;
