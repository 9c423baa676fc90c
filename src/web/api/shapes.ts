import type { z } from 'zod';
import type { RouteName, routes } from '../../contract/index.ts';

type Routes = typeof routes;

export type BodyOf<Name extends RouteName> = Routes[Name] extends { input?: infer Input extends z.ZodType }
  ? z.input<Input>
  : never;
export type QueryOf<Name extends RouteName> = Routes[Name] extends { query?: infer Query extends z.ZodType }
  ? z.input<Query>
  : never;
export type AnswerOf<Name extends RouteName> = z.output<Routes[Name]['output']>;

export interface RequestOf<Name extends RouteName> {
  /** Path parameters, such as `id`. */
  readonly params?: Readonly<Record<string, string>>;
  readonly query?: QueryOf<Name>;
  readonly body?: BodyOf<Name>;
}

type WithoutStamp<Body> = Body extends { stamp: unknown } ? Omit<Body, 'stamp'> : Body;

/** What a page gives to a write: the stamp is put on when it is sent. */
export interface WriteOf<Name extends RouteName> {
  readonly params?: Readonly<Record<string, string>>;
  readonly body: WithoutStamp<BodyOf<Name>>;
}
