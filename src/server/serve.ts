import type { Server } from 'node:http';
import { createAdaptorServer } from '@hono/node-server';
import { done, problem, type Result, refused } from '../core/problem.ts';

export interface Listening {
  readonly port: number;
  readonly address: string;
  /** Lets what is under way end, then closes. */
  close(): Promise<void>;
}

/** This computer only; other devices of the workshop come later, with a certificate. */
const HOST = '127.0.0.1';
/** How long a request under way may still take after closing began, in milliseconds (common practice, no source). */
const GRACE_MS = 3000;

const REFUSED: Readonly<Record<string, string>> = { EADDRINUSE: 'port-taken', EACCES: 'port-not-allowed' };

/** Listens on a port of this computer; 0 takes any free one. */
export function serve(
  fetch: (request: Request) => Response | Promise<Response>,
  port: number,
): Promise<Result<Listening>> {
  const server = createAdaptorServer({ fetch }) as Server;
  return new Promise((answer, fail) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      const code = REFUSED[error.code ?? ''];
      if (code === undefined) fail(error);
      // As text: a port is a name, and its digits do not stand apart.
      else answer(refused(problem(code, 'port', { found: String(port), allowed: String(port + 1) })));
    });
    server.listen(port, HOST, () => answer(done(listeningOf(server))));
  });
}

function listeningOf(server: Server): Listening {
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('a server listens on a port');
  return {
    port: address.port,
    address: `http://${HOST}:${address.port}`,
    close: () =>
      new Promise((closed) => {
        const grace = setTimeout(() => server.closeAllConnections(), GRACE_MS);
        server.close(() => {
          clearTimeout(grace);
          closed();
        });
        server.closeIdleConnections();
      }),
  };
}
