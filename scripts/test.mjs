// npm test: installs what it needs, then format, lint, types, build and every test. The last line counts.
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { countTests } from './count-tests.mjs';
import { checkNode, installPackages, runs } from './prepare.mjs';

/** Programs that tests run, with the Debian package of each. */
const PROGRAMS = { chromium: 'chromium', pdftoppm: 'poppler-utils', zbarimg: 'zbar-tools', ip: 'iproute2' };
/** A browser that goes by another name. Only root makes a network of its own: others ask from a second address. */
const OTHERWISE = {
  chromium: () => process.env.CHROMIUM !== undefined || isHere('chromium-browser'),
  ip: () => process.getuid?.() !== 0,
};

const isHere = (program) =>
  (process.env.PATH ?? '').split(delimiter).some((folder) => existsSync(join(folder, program)));

function installPrograms() {
  const missing = Object.entries(PROGRAMS).filter(([program]) => !isHere(program) && !OTHERWISE[program]?.());
  if (missing.length === 0) return true;
  const packages = missing.map(([, name]) => name);
  if (process.getuid?.() !== 0 || !existsSync('/etc/debian_version')) {
    console.error(
      `The tests need ${missing.map(([program]) => program).join(' and ')}. Please install: ${packages.join(' ')}`,
    );
    return false;
  }
  console.log(`Installing ${packages.join(' ')} ...`);
  const env = { DEBIAN_FRONTEND: 'noninteractive' };
  return (
    runs('apt-get', ['update', '-q'], env) &&
    runs('apt-get', ['install', '-y', '-q', '--no-install-recommends', ...packages], env)
  );
}

function end(passed, failed) {
  console.log(`${passed} passed, ${failed} failed`);
  process.exit(failed === 0 && passed > 0 ? 0 : 1);
}

function runTests() {
  const folder = mkdtempSync(join(tmpdir(), 'gramwright-test-'));
  const file = join(folder, 'report.json');
  runs(process.execPath, [
    'node_modules/vitest/vitest.mjs',
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${file}`,
  ]);
  try {
    return existsSync(file)
      ? countTests(JSON.parse(readFileSync(file, 'utf8')))
      : { passed: 0, failed: 1, reasons: ['the test runner ended without a report'] };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

checkNode();
if (!installPackages() || !installPrograms()) end(0, 1);
const stages = [
  ['format, lint, types', ['run', '--silent', 'check']],
  ['build', ['run', '--silent', 'build']],
].filter(([, command]) => !runs('npm', command));
const { passed, failed, reasons } = runTests();
for (const reason of [...stages.map(([name]) => `failed: ${name}`), ...reasons]) console.log(reason);
end(passed, failed + stages.length);
