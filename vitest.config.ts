import { defineConfig } from 'vitest/config';

// Pure rooms share one thread without isolation (fast); tests that open files, ports or a browser get a process each.
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          // One after the other: whole journeys must not wait for the processors behind hundreds of small tests.
          sequence: { groupOrder: 0 },
          include: ['src/**/*.test.ts', 'test/published/**/*.test.ts', 'test/walls.test.ts'],
          exclude: [
            'src/storage/**',
            'src/work/**',
            'src/server/**',
            'src/cli/**',
            'src/print/paint/**',
            'src/machine/**',
          ],
          pool: 'threads',
          isolate: false,
        },
      },
      {
        test: {
          name: 'parts',
          sequence: { groupOrder: 1 },
          include: ['src/{storage,work,server,cli,print/paint,machine}/**/*.test.ts'],
          pool: 'forks',
          testTimeout: 30_000,
        },
      },
      {
        test: {
          name: 'whole',
          sequence: { groupOrder: 2 },
          include: [
            'test/journeys/**/*.test.ts',
            'test/faults/**/*.test.ts',
            'test/docs/**/*.test.ts',
            'example/**/*.test.ts',
          ],
          pool: 'forks',
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
