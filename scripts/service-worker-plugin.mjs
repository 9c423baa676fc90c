import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, resolve, sep } from 'node:path';
import { build } from 'vite';

const ENTRY = 'service-worker';

/** Every file of the build by its address, in an order of its own. */
function listFiles(folder) {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  return names
    .filter((name) => statSync(join(folder, name)).isFile() && !name.endsWith('.map'))
    .map((name) => `/${name.split(sep).join('/')}`)
    .filter((path) => path !== `/${ENTRY}.js`)
    .sort();
}

/** Another file, or another byte in one, is another version. */
function digestOf(folder, files) {
  const hash = createHash('sha256');
  for (const file of files) hash.update(`${file}\0`).update(readFileSync(join(folder, file)));
  return hash.digest('hex').slice(0, 16);
}

/** After the pages: the service worker, as one plain script at the root, with the list of what was built. */
export function serviceWorker() {
  let root = '';
  let folder = '';
  return {
    name: ENTRY,
    apply: 'build',
    configResolved(config) {
      root = config.root;
      folder = resolve(root, config.build.outDir);
    },
    async closeBundle() {
      const files = listFiles(folder);
      await build({
        root,
        configFile: false,
        publicDir: false,
        logLevel: 'warn',
        define: { __FILES__: JSON.stringify(files), __VERSION__: JSON.stringify(digestOf(folder, files)) },
        build: {
          outDir: folder,
          emptyOutDir: false,
          target: 'es2022',
          rollupOptions: {
            input: resolve(root, `${ENTRY}/${ENTRY}.ts`),
            output: { format: 'iife', entryFileNames: `${ENTRY}.js` },
          },
        },
      });
    },
  };
}
