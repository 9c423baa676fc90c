import { join } from 'node:path';
import { done, type Problem, type Result } from '../core/problem.ts';
import {
  findProgramFolder,
  readOwnVersion,
  realMachine,
  removeAddressHint,
  writeAddressHint,
} from '../machine/index.ts';
import { createApp, type Listening, makeLog, serve } from '../server/index.ts';
import { cliWords, sayProblem } from '../words/index.ts';
import {
  backUpIfDue,
  type Context,
  fillWithExample,
  isWorkshopEmpty,
  openWorkshop,
  useCases,
  workshopZone,
} from '../work/index.ts';
import { sayProblems } from './say-problems.ts';

export interface StartWish {
  readonly folder: string;
  readonly port: number;
  /** Fills an empty workshop with the example. */
  readonly isExample: boolean;
  readonly buildExample?: Context['buildExample'];
}

/** How often it is asked whether the day's backup is due, in milliseconds: often enough after a night's sleep. */
const HOUR_MS = 60 * 60 * 1000;
const log = makeLog();

/** Opens the workshop and answers until it is told to end; the exit status. */
export async function start(wish: StartWish): Promise<number> {
  const opened = await openWorkshop({ ...wish, machine: realMachine });
  if (!opened.ok) return sayProblems(opened.problems);
  const context = opened.value;
  const filled =
    wish.isExample && (await isWorkshopEmpty(context)) ? await fillWithExample(context) : done(null);
  const listening = filled.ok ? await listen(context, wish.port) : filled;
  if (!listening.ok) {
    await context.storage.close();
    return sayProblems(listening.problems);
  }
  return answerUntilTold(context, listening.value);
}

async function listen(context: Context, port: number): Promise<Result<Listening>> {
  let listening: Listening | undefined;
  const app = createApp({
    context,
    useCases,
    version: readOwnVersion(),
    webFolder: join(findProgramFolder(), 'dist', 'web'),
    port: () => listening?.port ?? port,
    log,
  });
  const result = await serve(app.fetch, port);
  if (result.ok) listening = result.value;
  return result;
}

async function answerUntilTold(context: Context, listening: Listening): Promise<number> {
  const { file } = context.storage;
  const told = untilTold();
  writeAddressHint(file, listening.address);
  process.stdout.write(`${cliWords.started(listening.address, file)}\n`);
  const stopBackups = keepDailyBackups(context);
  await told;
  await listening.close();
  await stopBackups();
  removeAddressHint(file);
  await context.storage.close();
  return 0;
}

const untilTold = (): Promise<void> =>
  new Promise((told) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => told());
  });

async function warn(context: Context, problems: readonly Problem[]): Promise<void> {
  const timeZone = await workshopZone(context);
  log.warn({ problems }, problems.map((it) => sayProblem(it, { timeZone }).says).join(' '));
}

/** One at the start and then one a day; a refusal is said, and asked again an hour later. */
function keepDailyBackups(context: Context): () => Promise<void> {
  let running: Promise<void> = Promise.resolve();
  const ask = (): void => {
    running = running.then(async () => {
      try {
        const made = await backUpIfDue(context);
        if (!made.ok) await warn(context, made.problems);
      } catch (error) {
        log.error({ err: error }, 'daily backup');
      }
    });
  };
  ask();
  const timer = setInterval(ask, HOUR_MS);
  return () => {
    clearInterval(timer);
    return running;
  };
}
