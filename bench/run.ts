import Table from 'cli-table3';
import { benchBenchPage } from './bench-page-time.ts';
import { benchFullChecks } from './check-rate.ts';
import { benchMakingEntry } from './entry-time.ts';
import { benchJourneyMemory } from './journey-memory.ts';
import { benchKeystroke } from './keystroke-time.ts';
import { benchLabelPdf } from './label-pdf.ts';
import { emptyLoopRate, type Figure, round3 } from './measure.ts';
import { inFolder } from './running-program.ts';
import { benchStart } from './start-time.ts';
import { benchTrace } from './trace-time.ts';

/** What this machine does today, beside what is aimed at. Nothing is asserted: figures of a busy machine are worse. */

const baseline = (): Figure => ({
  name: 'an empty loop of a thousand additions',
  value: emptyLoopRate(),
  unit: 'loops/s',
  beside: 'baseline',
});

const benchLaidOutWorkshop = (): Promise<readonly Figure[]> =>
  inFolder(async (folder) => [await benchJourneyMemory(folder), await benchStart(folder)]);

async function runAll(): Promise<readonly Figure[]> {
  const rounds: readonly (() => readonly Figure[] | Promise<readonly Figure[]>)[] = [
    () => [baseline(), benchFullChecks()],
    benchMakingEntry,
    benchBenchPage,
    benchTrace,
    benchLabelPdf,
    benchLaidOutWorkshop,
    benchKeystroke,
  ];
  const figures: Figure[] = [];
  for (const round of rounds) {
    figures.push(...(await round()));
    // Where the run was started with --expose-gc, no round sweeps up after the one before.
    globalThis.gc?.();
  }
  return figures;
}

const table = new Table({
  head: ['figure', 'value', 'unit', 'beside'],
  colAligns: ['left', 'right', 'left', 'left'],
  style: { head: [], border: [] },
});
for (const { name, value, unit, beside } of await runAll())
  table.push([name, Number.isNaN(value) ? 'not known' : round3(value), unit, beside]);
process.stdout.write(`${table.toString()}\n`);
