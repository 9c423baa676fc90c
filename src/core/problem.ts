/**
 * The one shape of everything that can be wrong with what a person or a program gave us.
 *
 * A problem is data, not prose: `words/` turns its code and parameters into the sentence that a person reads.
 * Programming mistakes throw; bad input never does.
 */
export interface Problem {
  /** kebab-case and stable: `lot-too-small`. Each has its sentence in words/. */
  readonly code: string;
  /** Where: a field path such as `lines[3].grams`, or the name of the thing. */
  readonly where: string;
  /** What was found there, as it was given. */
  readonly found?: ProblemValue;
  /** What would have been allowed. */
  readonly allowed?: ProblemValue;
  /** Law, standard or house rule behind the refusal, where one stands behind it. */
  readonly source?: string;
  /** Further values that the sentence or its way out needs. */
  readonly parameters?: Readonly<Record<string, ProblemValue>>;
}

export type ProblemValue = string | number | boolean | null;

export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export const done = <T>(value: T): Result<T> => ({ ok: true, value });

export const refused = (...problems: readonly Problem[]): Result<never> => ({ ok: false, problems });

export const problem = (
  code: string,
  where: string,
  rest: Omit<Problem, 'code' | 'where'> = {},
): Problem => ({
  code,
  where,
  ...rest,
});

/** For places where a refusal would be our own mistake: unwraps, or throws with the problem's code. */
export function must<T>(result: Result<T>): T {
  if (result.ok) return result.value;
  throw new Error(`expected an answer, got: ${JSON.stringify(result.problems)}`);
}
