// What start and test have in common: the right Node, the packages of the lock file, a build that is not stale.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';

export const root = resolve(import.meta.dirname, '..');

const LEAST_NODE = [20, 11];

/** Ends with a sentence where Node is too old to run anything here. */
export function checkNode(version = process.versions.node) {
  const [major, minor] = version.split('.').map(Number);
  if (major > LEAST_NODE[0] || (major === LEAST_NODE[0] && minor >= LEAST_NODE[1])) return;
  console.error(`Gramwright needs Node ${LEAST_NODE.join('.')} or newer; this is ${version}.`);
  process.exit(1);
}

/** Runs a command with its output shown; whether it went well. */
export function runs(command, args, env = {}) {
  const { status, error } = spawnSync(command, args, {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, ...env },
  });
  if (error) console.error(`${command}: ${error.message}`);
  return status === 0;
}

const modified = (path) => statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0;

/** Installs what the lock file says, where nothing is installed or the lock file is newer. */
export function installPackages() {
  const installed = modified(join(root, 'node_modules', '.package-lock.json'));
  if (installed > 0 && installed >= modified(join(root, 'package-lock.json'))) return true;
  console.log('Installing packages (npm ci) ...');
  return runs('npm', ['ci', '--no-fund', '--no-audit']);
}

const SOURCES = [
  'src',
  'example',
  'bench',
  'package.json',
  'tsconfig.json',
  'vite.program.config.ts',
  'vite.config.ts',
];

function newestIn(path) {
  const full = join(root, path);
  if (!existsSync(full)) return 0;
  if (!statSync(full).isDirectory()) return modified(full);
  const files = readdirSync(full, { recursive: true }).filter((file) => !/\.test\.tsx?$/.test(file));
  return Math.max(0, ...files.map((file) => modified(join(full, file))));
}

/** The pages are built last, so their index tells when the build ended. */
export function isBuildStale() {
  const built = modified(join(root, 'dist', 'web', 'index.html'));
  return built === 0 || SOURCES.some((path) => newestIn(path) > built);
}
