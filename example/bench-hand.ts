import type { z } from 'zod';
import { type RouteName, routes } from '../src/contract/index.ts';
import { must, type Result, refused } from '../src/core/problem.ts';
import { problemsFromSchema } from '../src/core/problems-from-schema.ts';
import { type Context, type OpenUseCase, useCases } from '../src/work/index.ts';

type Body<Name extends RouteName> = (typeof routes)[Name] extends { input?: infer Input extends z.ZodType }
  ? z.input<Input>
  : never;
type Unstamped<Input> = Input extends { stamp: unknown } ? Omit<Input, 'stamp'> : Input;
type Answer<Name extends RouteName> = z.output<(typeof routes)[Name]['output']>;

/** Somebody at the bench: writes through the use-cases, as the pages do, at a time that the story sets. */
export interface BenchHand {
  readonly context: Context;
  /** Sets the clock: so many days from the day the story is told on, at this hour and minute (UTC). */
  at(day: number, hour: number, minute?: number): void;
  dateIn(days: number): string;
  setPerson(id: string): void;
  write<Name extends RouteName>(
    name: Name,
    body: Unstamped<Body<Name>>,
    params?: Record<string, string>,
  ): Promise<Answer<Name>>;
  read<Name extends RouteName>(
    name: Name,
    request?: { params?: Record<string, string>; query?: Record<string, string>; body?: object },
  ): Promise<Answer<Name>>;
}

/** All that making and filling need, be it in this process or over HTTP. */
export type ReadingAndWriting = Pick<BenchHand, 'read' | 'write'>;

const MS_PER_DAY = 86_400_000;

export function benchHand(context: Context): BenchHand {
  const today = Date.parse(`${context.machine.now().slice(0, 10)}T00:00:00Z`);
  let now = today;
  let person = '';
  const { newId } = context.machine;
  const told: Context = { ...context, machine: { newId, now: () => new Date(now).toISOString() } };
  const run = <Name extends RouteName>(
    name: Name,
    request: { params: Record<string, string>; query: unknown; body: unknown },
  ) =>
    (useCases[name as keyof typeof useCases] as unknown as OpenUseCase<Name>)(
      told,
      request as never,
    ) as Promise<Result<Answer<Name>>>;
  return {
    context: told,
    at(day, hour, minute = 0) {
      now = today + day * MS_PER_DAY + hour * 3_600_000 + minute * 60_000;
    },
    dateIn: (days) => new Date(today + days * MS_PER_DAY).toISOString().slice(0, 10),
    setPerson(id) {
      person = id;
    },
    async write(name, body, params = {}) {
      const stamp = { id: newId(), at: told.machine.now(), by: person, device: 'bench tablet' };
      const { input } = routes[name] as { input?: z.ZodType };
      // One minute later for the next entry: nobody writes two in the same instant.
      now += 60_000;
      return must(
        await run(name, {
          params,
          query: undefined,
          body: must(readBody(input, { stamp, ...(body as object) })),
        }),
      );
    },
    read: async (name, { params = {}, query = {}, body } = {}) =>
      must(await run(name, { params, query, body })),
  };
}

function readBody(schema: z.ZodType | undefined, body: unknown): Result<unknown> {
  const read = schema?.safeParse(body);
  if (!read) return { ok: true, value: undefined };
  return read.success ? { ok: true, value: read.data } : refused(...problemsFromSchema(read.error, body));
}
