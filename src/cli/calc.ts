import { calculations, findCalculation, runCalculation } from '../catalogue/index.ts';
import { done, type Problem, problem, type Result, refused } from '../core/problem.ts';
import { sayProblem } from '../words/index.ts';
import { describeCalculation } from './describe-calculation.ts';

export interface CalcWish {
  readonly name?: string | undefined;
  /** JSON, `-`, or nothing: the last two read standard input. */
  readonly input?: string | undefined;
  readonly isHelp: boolean;
}

/** Status of a refused input; 0 means that an answer was computed, whatever its verdict. */
const REFUSED = 2;

/** Only JSON goes to standard output; a refusal goes to standard error as problems. */
export async function calc({ name, input, isHelp }: CalcWish): Promise<number> {
  if (name === undefined)
    return write(done(calculations.map(({ name, title, summary }) => ({ name, title, summary }))));
  if (isHelp) return help(name);
  if (!findCalculation(name)) return write(runCalculation(name, undefined));
  const read = readJson(input === undefined || input === '-' ? await readStandardInput() : input);
  return write(read.ok ? runCalculation(name, read.value) : read);
}

function help(name: string): number {
  const calculation = findCalculation(name);
  if (!calculation) return write(runCalculation(name, undefined));
  process.stdout.write(describeCalculation(calculation));
  return 0;
}

function readJson(text: string): Result<unknown> {
  if (text.trim() === '') return refused(problem('input-missing', 'input'));
  try {
    return done(JSON.parse(text));
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return refused(problem('json-broken', 'input', { found: error.message }));
  }
}

async function readStandardInput(): Promise<string> {
  if (process.stdin.isTTY) return '';
  let text = '';
  for await (const chunk of process.stdin.setEncoding('utf8')) text += String(chunk);
  return text;
}

const spoken = (found: Problem) => ({ ...found, ...sayProblem(found) });

function write(result: Result<unknown>): number {
  if (result.ok) {
    process.stdout.write(`${JSON.stringify(result.value, null, 2)}\n`);
    return 0;
  }
  process.stderr.write(`${JSON.stringify({ problems: result.problems.map(spoken) }, null, 2)}\n`);
  return REFUSED;
}
