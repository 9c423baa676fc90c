import { benchFullChecks } from './check-rate.ts';
import { emptyLoopRate, type Figure, fsyncMs, round3 } from './measure.ts';

/** `npm run bench`: rates as they come out on this machine, beside what the same machine does at the least. */
const baseline: readonly Figure[] = [
  { name: 'one write of 4 kB with fsync', value: fsyncMs(), unit: 'ms', beside: 'baseline' },
  { name: 'a loop of a thousand additions', value: emptyLoopRate(), unit: 'loops/s', beside: 'baseline' },
];

for (const { name, value, unit, beside } of [...baseline, benchFullChecks()]) {
  process.stdout.write(`${name}: ${round3(value)} ${unit} (${beside})\n`);
}
