import type { z } from 'zod';
import type { RouteName, routes } from '../contract/index.ts';
import type { Result } from '../core/problem.ts';
import type { AskedContext, Context } from './context.ts';

type Routes = typeof routes;
type BodyOf<Name extends RouteName> = Routes[Name] extends { input?: infer Input extends z.ZodType }
  ? z.output<Input>
  : undefined;
type QueryOf<Name extends RouteName> = Routes[Name] extends { query?: infer Query extends z.ZodType }
  ? z.output<Query>
  : undefined;

/** A file that goes to the reader as it is: a PDF, a zip. */
export interface Paper {
  readonly fileName: string;
  readonly bytes: Uint8Array;
  /** Where the route has files of several kinds: that of this one. */
  readonly media?: 'image/png' | 'image/jpeg';
}

export interface RequestOf<Name extends RouteName> {
  /** Path parameters, such as `id`. */
  readonly params: Readonly<Record<string, string>>;
  readonly query: QueryOf<Name>;
  readonly body: BodyOf<Name>;
}

type AnswerOf<Name extends RouteName> = [NonNullable<Routes[Name]['media']>] extends [never]
  ? z.output<Routes[Name]['output']>
  : Paper;

/** One use-case for one row of the table of routes. Reads write nothing; each write is one transaction. */
export type UseCase<Name extends RouteName> = (
  context: AskedContext,
  request: RequestOf<Name>,
) => Promise<Result<AnswerOf<Name>>>;

export type UseCases<Names extends RouteName> = { readonly [Name in Names]: UseCase<Name> };

/** The same from outside: the request is noted on the way in. */
export type OpenUseCase<Name extends RouteName> = (
  context: Context,
  request: RequestOf<Name>,
) => Promise<Result<AnswerOf<Name>>>;

export type OpenUseCases<Names extends RouteName> = { readonly [Name in Names]: OpenUseCase<Name> };
