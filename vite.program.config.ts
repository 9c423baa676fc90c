import { defineConfig } from 'vite';

/**
 * The program as a few files instead of a thousand, so that it starts in less than half the time: each module that Node
 * looks up and compiles by itself costs about a millisecond. Packages that are ES modules come in with it; those with native parts,
 * threads or files of their own stay beside it.
 */
const BROUGHT_IN = [
  '@formatjs/',
  '@hono/node-server',
  '@noble/hashes',
  'decimal.js',
  'fflate',
  'hono',
  'intl-messageformat',
  'kysely',
  'temporal-polyfill',
  'zod',
];

export default defineConfig({
  ssr: { noExternal: BROUGHT_IN.map((name) => new RegExp(`^${name}`)) },
  build: {
    ssr: true,
    target: 'node20',
    outDir: 'dist/program',
    emptyOutDir: true,
    reportCompressedSize: false,
    rollupOptions: {
      input: {
        program: 'src/cli/index.ts',
        example: 'example/index.ts',
        bench: 'bench/run.ts',
        catalogue: 'src/catalogue/index.ts',
      },
    },
  },
});
