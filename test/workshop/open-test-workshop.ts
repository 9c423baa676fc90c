import type { z } from 'zod';
import { type RouteName, routes } from '../../src/contract/index.ts';
import { must, type Result, refused } from '../../src/core/problem.ts';
import { problemsFromSchema } from '../../src/core/problems-from-schema.ts';
import { openStorage } from '../../src/storage/index.ts';
import type { Context } from '../../src/work/context.ts';
import { useCases } from '../../src/work/index.ts';

type Routes = typeof routes;
type Known = keyof typeof useCases & RouteName;
type BodyIn<Name extends Known> = Routes[Name] extends { input?: infer Input extends z.ZodType }
  ? z.input<Input>
  : undefined;
type Answer<Name extends Known> = Awaited<ReturnType<(typeof useCases)[Name]>>;
type Value<Name extends Known> = Answer<Name> extends Result<infer T> ? T : never;

/** Each shape of a choice by itself. */
type WithoutStamp<Body> = Body extends unknown ? Omit<Body, 'stamp'> : never;

export interface TestRequest<Name extends Known> {
  readonly params?: Record<string, string>;
  readonly query?: Record<string, string>;
  /** Its stamp may be left out: the workshop's first person, now. */
  readonly body?: WithoutStamp<BodyIn<Name>> & { readonly stamp?: TestStamp };
}

export interface TestStamp {
  readonly id: string;
  readonly at: string;
  readonly by: string;
  readonly device: string;
}

/** A begun workshop in memory, or in a file, with a clock that stands still until it is set and ids that count. */
export interface TestWorkshop {
  readonly context: Context;
  /** Two people who work here. */
  readonly people: { readonly first: string; readonly second: string };
  readonly places: { readonly shelf: string; readonly retained: string };
  now(): string;
  /** An instant, `2026-11-27T09:00:00Z`. */
  setClock(instant: string): void;
  stamp(more?: Partial<TestStamp>): TestStamp;
  newId(): string;
  /** As the server does it: the contract reads the input first. */
  ask<Name extends Known>(name: Name, request?: TestRequest<Name>): Promise<Answer<Name>>;
  /** The same, where a refusal would be the test's own mistake. */
  get<Name extends Known>(name: Name, request?: TestRequest<Name>): Promise<Value<Name>>;
  close(): Promise<void>;
}

export interface TestOptions {
  readonly file?: string;
  readonly now?: string;
  /** Leaves the file empty, as before the first start. */
  readonly isEmpty?: boolean;
  readonly buildExample?: Context['buildExample'];
}

/** A Thursday morning in winter: London's clock is UTC's. */
const MORNING = '2026-11-26T08:05:00Z';

export async function openTestWorkshop(options: TestOptions = {}): Promise<TestWorkshop> {
  const clock = { now: options.now ?? MORNING, ids: 0 };
  const newId = () => {
    clock.ids += 1;
    return `id-${String(clock.ids).padStart(6, '0')}`;
  };
  const context: Context = {
    storage: must(await openStorage(options.file ?? ':memory:')),
    machine: { now: () => clock.now, newId },
    ...(options.buildExample && { buildExample: options.buildExample }),
  };
  const bench = benchOf(context, clock);
  return options.isEmpty ? bench : begin(bench);
}

function benchOf(context: Context, clock: { now: string }): TestWorkshop {
  const people = { first: '', second: '' };
  const { newId } = context.machine;
  const stamp = (more: Partial<TestStamp> = {}): TestStamp => ({
    id: newId(),
    at: clock.now,
    by: people.first,
    device: 'test bench',
    ...more,
  });
  const ask = <Name extends Known>(name: Name, request: TestRequest<Name> = {}) =>
    askUseCase(context, name, request, stamp);
  return {
    context,
    people,
    places: { shelf: '', retained: '' },
    now: () => clock.now,
    setClock: (instant) => {
      clock.now = instant;
    },
    stamp,
    newId,
    ask,
    get: async (name, request) => must((await ask(name, request)) as Result<Value<typeof name>>),
    close: () => context.storage.close(),
  };
}

async function begin(bench: TestWorkshop): Promise<TestWorkshop> {
  const begun = await bench.get('beginWorkshop', {
    body: { with: 'own', name: 'Test Bench', firstPerson: 'Ada Quill' },
  });
  const placeOf = (kind: string) => begun.places.find((place) => place.kind === kind)?.id ?? '';
  const people = bench.people as { first: string; second: string };
  people.first = begun.people[0]?.id ?? '';
  people.second = (await bench.get('savePerson', { body: { name: 'Bo Marsh' } })).id;
  return { ...bench, places: { shelf: placeOf('shelf'), retained: placeOf('retained') } };
}

/** The routes' shapes decide first; what they refuse comes back as problems, as over HTTP. */
async function askUseCase<Name extends Known>(
  context: Context,
  name: Name,
  { params = {}, query = {}, body }: TestRequest<Name>,
  stamp: () => TestStamp,
): Promise<Answer<Name>> {
  const shapes = routes[name] as { method: string; input?: z.ZodType; query?: z.ZodType };
  const needsStamp = name !== 'beginWorkshop' && shapes.method !== 'GET' && hasStamp(shapes.input);
  const given = needsStamp ? { ...body, stamp: body?.stamp ?? stamp() } : body;
  const readBody = shapes.input?.safeParse(given);
  const readQuery = shapes.query?.safeParse(query);
  for (const [read, input] of [
    [readBody, given],
    [readQuery, query],
  ] as const) {
    if (read && !read.success)
      return refused(...problemsFromSchema(read.error, input)) as unknown as Answer<Name>;
  }
  const carryOut = useCases[name] as (context: Context, request: unknown) => Promise<Answer<Name>>;
  return carryOut(context, { params, query: readQuery?.data, body: readBody?.data });
}

const hasStamp = (input: z.ZodType | undefined): boolean =>
  input !== undefined && 'shape' in input && 'stamp' in (input.shape as object);
