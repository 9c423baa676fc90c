import type { z } from 'zod';

export type PaperMedia =
  | 'application/pdf'
  | 'application/zip'
  | 'image/svg+xml'
  | 'application/x-x509-ca-cert';

/**
 * Who is answered: everybody who reaches the computer, or only who sits at the computer itself. Left out: this computer
 * and the devices that were paired with it.
 */
export type OpenTo = 'anyone' | 'own-computer';

/** One row of the table of routes: server, command line and pages all take method, path and shapes from here. */
export interface Route<
  Input extends z.ZodType = z.ZodType,
  Output extends z.ZodType = z.ZodType,
  Query extends z.ZodType = z.ZodType,
  Media extends PaperMedia | undefined = PaperMedia | undefined,
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
  readonly media?: Media;
  readonly openTo?: OpenTo;
  /** Where a file comes in with it, as base64; everything else is a few kilobytes, and one megabyte is the limit. */
  readonly largestBodyMegabytes?: number;
}

/** Keeps every shape, and whether the answer is a paper. */
export const route = <
  Input extends z.ZodType,
  Output extends z.ZodType,
  Query extends z.ZodType,
  Media extends PaperMedia | undefined = undefined,
>(
  row: Route<Input, Output, Query, Media>,
): Route<Input, Output, Query, Media> => row;
