import { join } from 'node:path';
import { done, type Problem, type Result } from '../core/problem.ts';
import {
  findProgramFolder,
  networkFolder,
  readOwnVersion,
  realMachine,
  removeAddressHint,
  writeAddressHint,
} from '../machine/index.ts';
import {
  type AppWish,
  createApp,
  type Listening,
  type Live,
  makeLive,
  makeLog,
  makeNetwork,
  serve,
} from '../server/index.ts';
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
  /** Opens the network's door now, and from now on. */
  readonly isNetwork?: boolean;
  readonly networkPort?: number;
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
  const doors = filled.ok ? await openDoors(context, wish) : filled;
  if (!doors.ok) {
    await context.storage.close();
    return sayProblems(doors.problems);
  }
  return answerUntilTold(context, doors.value);
}

interface Doors {
  /** Of this computer, always; the command line asks it too. */
  readonly own: Listening;
  readonly network: ReturnType<typeof makeNetwork>;
  /** Open pages of both doors. */
  readonly live: Live;
}

async function openDoors(context: Context, wish: StartWish): Promise<Result<Doors>> {
  let listening: Listening | undefined;
  const live = makeLive(context);
  const parts: Omit<AppWish, 'port'> = {
    context,
    useCases,
    version: readOwnVersion(),
    webFolder: join(findProgramFolder(), 'dist', 'web'),
    log,
    live,
  };
  const network = makeNetwork({ ...parts, folder: networkFolder(context.storage.file) });
  const app = createApp({
    ...parts,
    context: { ...context, network },
    port: () => listening?.port ?? wish.port,
  });
  const own = await serve(app.fetch, wish.port);
  if (!own.ok) return own;
  listening = own.value;
  await network.door.start({ isWanted: wish.isNetwork ?? false, port: wish.networkPort });
  return done({ own: listening, network, live });
}

async function answerUntilTold(context: Context, { own, network, live }: Doors): Promise<number> {
  const { file } = context.storage;
  const told = untilTold();
  writeAddressHint(file, own.address);
  process.stdout.write(`${cliWords.started(own.address, file)}\n`);
  await sayNetwork(context, network);
  const stopBackups = keepDailyBackups(context);
  await told;
  // Nobody waits for pages that only listen.
  live.close();
  await Promise.all([own.close(), network.door.close()]);
  await stopBackups();
  removeAddressHint(file);
  await context.storage.close();
  return 0;
}

/** A network that could not be opened stops nobody from working at this computer. */
async function sayNetwork(context: Context, { door }: Doors['network']): Promise<void> {
  const { isOn, ways, trouble } = await door.view();
  if (isOn) process.stdout.write(`${cliWords.reached(ways.map(({ url }) => url))}\n`);
  if (trouble) await warn(context, [trouble]);
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
