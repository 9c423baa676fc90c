import type { Context as HonoContext } from 'hono';
import { streamSSE } from 'hono/streaming';
import { problem } from '../core/problem.ts';
import type { Context } from '../work/index.ts';
import { answerProblems } from './answer.ts';

/** Open pages that are told of writes as they happen (server-sent events, HTML standard, section 9.2). */
export interface Live {
  readonly answer: (http: HonoContext) => Response;
  /** Ends every stream: a server that closes waits for nobody who only listens. */
  readonly close: () => void;
}

/** A workshop of two has a handful of pages in sight; many more are a mistake of somebody (common practice, no source). */
const MOST_STREAMS = 40;
/** A line in between, so that neither side takes the other for gone (HTML standard, 9.2.8, advises 15 seconds). */
const BEAT_MS = 15_000;
/** Asked again after so long by whoever lost the stream. */
const RETRY_MS = 2_000;

export function makeLive({ storage }: Pick<Context, 'storage'>): Live {
  const ends = new Set<() => void>();
  let isClosed = false;

  const follow = (http: HonoContext): Response =>
    streamSSE(http, async (stream) => {
      const tell = (text: string): void => void stream.write(text);
      tell(`retry: ${RETRY_MS}\n\n`);
      const unwatch = storage.written.watch((written) => tell(`data: ${JSON.stringify(written)}\n\n`));
      const beat = setInterval(() => tell(':\n\n'), BEAT_MS);
      await new Promise<void>((end) => {
        ends.add(end);
        stream.onAbort(() => {
          ends.delete(end);
          end();
        });
      });
      clearInterval(beat);
      unwatch();
    });

  return {
    answer: (http) =>
      isClosed || ends.size >= MOST_STREAMS
        ? answerProblems([problem('too-many-streams', http.req.path, { allowed: MOST_STREAMS })], 422)
        : follow(http),
    close() {
      isClosed = true;
      for (const end of ends) end();
      ends.clear();
    },
  };
}
