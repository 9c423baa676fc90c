import { defineConfig } from 'vitest/config';

// Pure rooms share one thread and parts a process a worker, without isolation (fast); tests that open a port or a browser get a process each.
export default defineConfig({
  test: {
    // Left to itself vitest keeps one processor free, which on two leaves half the machine idle.
    maxWorkers: '100%',
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
          isolate: false,
          testTimeout: 30_000,
        },
      },
      {
        test: {
          name: 'whole',
          sequence: { groupOrder: 2 },
          // A browser and a server beside each test already fill the machine.
          maxWorkers: 1,
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
