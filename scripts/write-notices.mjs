// Writes THIRD-PARTY-NOTICES.md: what the program ships, with each licence's text as its package carries it.
// Shipped are the packages that run on the server (dependencies) and those that are built into the pages (BUNDLED).
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

const root = resolve(import.meta.dirname, '..');
const BUNDLED = [
  '@fontsource-variable/source-sans-3',
  '@tanstack/react-query',
  '@tanstack/react-router',
  'lucide-react',
  'react',
  'react-aria-components',
  'react-dom',
];

const readJson = (path) => JSON.parse(readFileSync(path, 'utf8'));
const lock = readJson(join(root, 'package-lock.json')).packages;

/** The place in the lock file where Node would find `name` from `from`. */
function locate(name, from) {
  for (let base = from; ; base = base.slice(0, Math.max(0, base.lastIndexOf('/node_modules/')))) {
    const path = `${base === '' ? '' : `${base}/`}node_modules/${name}`;
    if (lock[path]) return path;
    if (base === '') return undefined;
  }
}

function collect(names) {
  const found = new Set();
  const queue = names.map((name) => locate(name, ''));
  while (queue.length > 0) {
    const path = queue.pop();
    if (path === undefined || found.has(path)) continue;
    found.add(path);
    for (const name of Object.keys(lock[path].dependencies ?? {})) queue.push(locate(name, path));
  }
  return [...found].sort();
}

function licenceText(path) {
  const folder = join(root, path);
  const files = readdirSync(folder).filter((file) => /^(licen[cs]e|copying|notice)/i.test(file));
  return files.map((file) => readFileSync(join(folder, file), 'utf8').trim()).join('\n\n');
}

const named = (path) => path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);

export function notices() {
  const paths = collect([...Object.keys(lock[''].dependencies), ...BUNDLED]);
  const byText = new Map();
  for (const path of paths) {
    const text =
      licenceText(path) || '(The package carries no licence file; its licence is the one named here.)';
    const line = `${named(path)} ${lock[path].version}: ${lock[path].license ?? 'by its licence text'}`;
    byText.set(text, [...(byText.get(text) ?? []), line]);
  }
  const parts = [...byText].map(
    ([text, lines]) => `${lines.map((line) => `- ${line}`).join('\n')}\n\n\`\`\`text\n${text}\n\`\`\``,
  );
  const head =
    '# Third-party notices\n\nWhat Gramwright ships besides its own code. The typeface Source Sans 3 stands under the SIL Open Font License 1.1.\nWritten by `node scripts/write-notices.mjs`; a test keeps it current.';
  return `${[head, ...parts].join('\n\n')}\n`;
}

if (process.argv[1] === import.meta.filename) writeFileSync(join(root, 'THIRD-PARTY-NOTICES.md'), notices());
