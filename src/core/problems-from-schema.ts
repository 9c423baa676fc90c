import type { z } from 'zod';
import { type Problem, type ProblemValue, problem } from './problem.ts';

type Path = readonly PropertyKey[];

/** Field path as a person would write it: `lines[3].grams`. */
const pathText = (path: Path): string =>
  path.reduce<string>(
    (text, key) =>
      typeof key === 'number' ? `${text}[${key}]` : text === '' ? String(key) : `${text}.${String(key)}`,
    '',
  ) || 'input';

function valueAt(input: unknown, path: Path): unknown {
  let value = input;
  for (const key of path) {
    if (typeof value !== 'object' || value === null) return undefined;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  return value;
}

function shown(value: unknown): ProblemValue {
  if (value === undefined) return 'nothing';
  if (value === null || typeof value === 'boolean') return value;
  if (typeof value === 'number') return Number.isFinite(value) ? value : String(value);
  const text = typeof value === 'string' ? value : JSON.stringify(value);
  return text.length > 80 ? `${text.slice(0, 77)}...` : text;
}

/** Turns a schema's complaints into problems: one for each field, with what was found and what is allowed. */
export function problemsFromSchema(error: z.ZodError, input: unknown): Problem[] {
  return error.issues.flatMap((issue) => problemsOf(issue, input));
}

const FORMAT_CODES: Readonly<Record<string, string>> = {
  regex: 'format-regex',
  date: 'format-date',
  datetime: 'format-datetime',
  base64: 'format-base64',
};

/** None of several shapes fitted: says which choices there are, or what the last shape, the fullest one, lacks. */
function unionProblems(
  issue: z.core.$ZodIssueInvalidUnion,
  where: string,
  found: ProblemValue,
  input: unknown,
): Problem[] {
  if (issue.errors.length === 0) {
    const allowed = ((issue as { options?: readonly unknown[] }).options ?? []).map(String).join(', ');
    return [problem('value-not-one-of', where, { found, allowed })];
  }
  const kinds = issue.errors.map((branch) => branch[0]);
  if (kinds.every((first) => first?.code === 'invalid_type' && first.path.length === 0)) {
    const allowed = kinds.map((first) => (first?.code === 'invalid_type' ? first.expected : '')).join(' or ');
    return [problem('field-wrong-type', where, { found, allowed })];
  }
  const last = issue.errors.findLast((branch) => branch[0]?.code !== 'invalid_type') ?? [];
  return last.flatMap((inner) => problemsOf({ ...inner, path: [...issue.path, ...inner.path] }, input));
}

function problemsOf(issue: z.core.$ZodIssue, input: unknown): Problem[] {
  const where = pathText(issue.path);
  const found = shown(valueAt(input, issue.path));
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) =>
        problem('field-unknown', pathText([...issue.path, key]), { found: key }),
      );
    case 'invalid_type':
      return found === 'nothing'
        ? [problem('field-missing', where, { allowed: issue.expected })]
        : [problem('field-wrong-type', where, { found, allowed: issue.expected })];
    case 'too_small':
      return [
        problem(issue.inclusive ? 'value-too-small' : 'value-not-above', where, {
          found,
          allowed: shown(Number(issue.minimum)),
          parameters: { counted: issue.origin },
        }),
      ];
    case 'too_big':
      return [
        problem(issue.inclusive ? 'value-too-large' : 'value-not-below', where, {
          found,
          allowed: shown(Number(issue.maximum)),
          parameters: { counted: issue.origin },
        }),
      ];
    case 'invalid_value':
      return [problem('value-not-one-of', where, { found, allowed: issue.values.map(String).join(', ') })];
    case 'not_multiple_of':
      return [problem('value-not-multiple', where, { found, allowed: shown(Number(issue.divisor)) })];
    case 'invalid_format':
      return [
        problem(FORMAT_CODES[issue.format] ?? 'format-other', where, {
          found,
          allowed: issue.format === 'regex' ? String(issue.pattern) : issue.format,
        }),
      ];
    case 'invalid_union':
      return unionProblems(issue, where, found, input);
    case 'invalid_key':
      return issue.issues.flatMap((inner) => problemsOf({ ...inner, path: issue.path }, input));
    case 'custom':
      return [
        problem(String(issue.params?.code ?? 'value-refused'), where, {
          found,
          ...(issue.params?.problem as object | undefined),
        }),
      ];
    default:
      return [problem('value-refused', where, { found })];
  }
}
