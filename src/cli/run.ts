import { homedir } from 'node:os';
import { join } from 'node:path';
import { Command, CommanderError } from 'commander';
import { problem } from '../core/problem.ts';
import { readOwnVersion } from '../machine/index.ts';
import { cliWords } from '../words/index.ts';
import type { Context } from '../work/index.ts';
import { sayProblems } from './say-problems.ts';

export interface RunWish {
  /** Loaded only when it is needed: the example's builder lives outside the program. */
  readonly buildExample?: Context['buildExample'];
}

const PORT = cliWords.usualPort;
/** As a shell has it: the command was typed wrongly. */
const TYPED_WRONGLY = 2;

const defaultFolder = (): string => process.env.GRAMWRIGHT_FOLDER || join(homedir(), 'Gramwright');

/** Runs one command; the exit status. Each command loads only what it needs, so that `calc` answers at once. */
export async function run(argv: readonly string[], wish: RunWish = {}): Promise<number> {
  let status = 0;
  const program = describeProgram(wish, (result) => {
    status = result;
  });
  try {
    await program.parseAsync(argv, { from: 'user' });
    return status;
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    return error.exitCode === 0 ? 0 : TYPED_WRONGLY;
  }
}

function describeProgram(wish: RunWish, end: (status: number) => void): Command {
  const { commands, options } = cliWords;
  const program = new Command('gramwright')
    .description(cliWords.about)
    .version(readOwnVersion())
    .exitOverride()
    .helpCommand(false);
  const command = (line: string, about: string): Command => program.command(line).description(about);
  const withFolder = (made: Command): Command =>
    made.option('--folder <folder>', options.folder, defaultFolder());

  withFolder(command('start', commands.start))
    .option('--port <port>', options.port, PORT)
    .option('--example', options.example, false)
    .option('--network', options.network, false)
    .option('--network-port <port>', options.networkPort)
    .action(async (chosen: StartOptions) => end(await startAs(chosen, wish)));
  command('calc', commands.calc)
    .argument('[name]', options.name)
    .argument('[json]', options.input)
    .helpOption(false)
    .option('-h, --help', options.calcHelp, false)
    .action(async (name, input, { help }, self: Command) => {
      if (help && name === undefined) self.outputHelp();
      else end(await (await import('./calc.ts')).calc({ name, input, isHelp: help }));
    });
  withFolder(command('backup', commands.backup))
    .option('--to <folder>', options.to)
    .action(async ({ folder, to }) => end(await (await import('./keeping.ts')).backup(folder, to)));
  withFolder(command('restore', commands.restore))
    .argument('<file>', options.file)
    .action(async (file, { folder }) => end(await (await import('./keeping.ts')).restore(folder, file)));
  withFolder(command('check-up', commands.checkUp)).action(async ({ folder }) =>
    end(await (await import('./keeping.ts')).checkUp(folder)),
  );
  withFolder(command('export', commands.export))
    .option('--json', options.json)
    .option('--csv', options.csv)
    .option('--to <file>', options.exportTo)
    .action(async ({ folder, json, csv, to }) => end(await exportAs(folder, json, csv, to)));
  return program;
}

interface StartOptions {
  readonly folder: string;
  readonly port: string;
  readonly example: boolean;
  readonly network: boolean;
  readonly networkPort?: string;
}

const isPort = (text: string, least: number): boolean =>
  /^\d{1,5}$/.test(text) && Number(text) >= least && Number(text) <= 65535;

async function startAs(
  { folder, port, example, network, networkPort }: StartOptions,
  wish: RunWish,
): Promise<number> {
  if (!isPort(port, 0)) return sayProblems([problem('port-wrong', 'port', { found: port, allowed: PORT })]);
  if (networkPort !== undefined && !isPort(networkPort, 1024))
    return sayProblems([problem('network-port-wrong', 'network-port', { found: networkPort })]);
  const { start } = await import('./start.ts');
  const isNetwork = network || networkPort !== undefined;
  const wished = { folder, port: Number(port), isExample: example, isNetwork, ...wish };
  return start(networkPort === undefined ? wished : { ...wished, networkPort: Number(networkPort) });
}

async function exportAs(folder: string, json?: true, csv?: true, to?: string): Promise<number> {
  if (json === csv) return sayProblems([problem('export-kind-missing', 'export')]);
  return (await import('./keeping.ts')).exportAll(folder, json ? 'json' : 'csv', to);
}
