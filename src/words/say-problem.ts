import type { Problem, ProblemValue } from '../core/problem.ts';
import { patterns } from './patterns.en-gb.ts';
import type { ProblemWords } from './problem-words.ts';
import { problems } from './registry.ts';
import { render, type Words } from './render.ts';
import { type SayOptions, sayUnknown } from './say.ts';
import { isDate, isInstant, sayDateWithYear, sayInstant } from './say-date.ts';
import { sayWhere } from './say-where.ts';

export interface SpokenProblem {
  readonly says: string;
  readonly mend: string;
}

function sayValue(value: ProblemValue | undefined, { timeZone }: SayOptions): string | number {
  if (value === undefined || value === null) return 'nothing';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') return value;
  if (isDate(value)) return sayDateWithYear(value);
  return isInstant(value) ? sayInstant(value, timeZone) : value;
}

function wordsOf(problem: Problem, options: SayOptions): Words {
  const { where, found, allowed, source, parameters } = problem;
  const entries = Object.entries({ ...parameters, found, allowed, source: source ?? null });
  return {
    ...Object.fromEntries(entries.map(([name, value]) => [name, sayValue(value, options)])),
    where: sayWhere(where),
    pattern: patterns[String(allowed)] ?? `text that fits ${String(allowed)}`,
  };
}

const startSentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Says what is wrong and how to mend it. A code without a sentence, or with a gap in it, is shown with all that is known. */
export function sayProblem(problem: Problem, options: SayOptions = {}): SpokenProblem {
  const texts: ProblemWords | undefined = problems.get(problem.code);
  const words = wordsOf(problem, options);
  const says = texts && render(texts.says, words, options.timeZone);
  const mend = texts && render(texts.mend, words, options.timeZone);
  if (says === undefined || mend === undefined) return sayUnknownProblem(problem);
  return { says: startSentence(says), mend };
}

function sayUnknownProblem({ code, where, found, allowed, source, parameters }: Problem): SpokenProblem {
  const given = Object.entries({ where, found, allowed, source, ...parameters }).filter(
    ([, value]) => value !== undefined,
  );
  return {
    says: sayUnknown(code, Object.fromEntries(given) as Record<string, ProblemValue>),
    mend: 'Please tell whoever looks after the program.',
  };
}
