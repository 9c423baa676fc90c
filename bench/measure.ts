import { closeSync, fsyncSync, mkdtempSync, openSync, rmSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';

/** Rates and times as they come out on this machine, beside a baseline of the same machine. Nothing is asserted. */

export interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly beside: string;
}

const sorted = (values: readonly number[]): number[] => [...values].sort((one, other) => one - other);
export const quantile = (values: readonly number[], share: number): number =>
  sorted(values)[Math.min(values.length - 1, Math.floor(values.length * share))] ?? Number.NaN;

/** How often `work` runs in a second: the median of five rounds of `seconds` after one warm-up round. */
export function ratePerSecond(work: () => void, seconds = 0.5): number {
  const round = (): number => {
    const until = performance.now() + seconds * 1000;
    const start = performance.now();
    let count = 0;
    while (performance.now() < until) {
      work();
      count += 1;
    }
    return (count * 1000) / (performance.now() - start);
  };
  round();
  return quantile(Array.from({ length: 5 }, round), 0.5);
}

/** Milliseconds of each run of `work`, in order. */
export async function timesOf(work: () => Promise<unknown>, runs: number): Promise<number[]> {
  const times: number[] = [];
  for (let run = 0; run < runs; run += 1) {
    const start = performance.now();
    await work();
    times.push(performance.now() - start);
  }
  return times;
}

/** One write of 4 kB with fsync, in milliseconds (median of 200): what the disk costs at the least. */
export function fsyncMs(): number {
  const folder = mkdtempSync(join(tmpdir(), 'gramwright-bench-'));
  const file = openSync(join(folder, 'probe'), 'w');
  const block = Buffer.alloc(4096, 1);
  const times: number[] = [];
  for (let run = 0; run < 200; run += 1) {
    const start = performance.now();
    writeSync(file, block);
    fsyncSync(file);
    times.push(performance.now() - start);
  }
  closeSync(file);
  rmSync(folder, { recursive: true });
  return quantile(times, 0.5);
}

/** How often an empty loop of a thousand additions runs in a second. */
export function emptyLoopRate(): number {
  let sink = 0;
  const rate = ratePerSecond(() => {
    for (let index = 0; index < 1000; index += 1) sink += index;
  }, 0.2);
  if (Number.isNaN(sink)) throw new Error('the loop was not run');
  return rate;
}

export const round3 = (value: number): string =>
  value >= 100 ? Math.round(value).toLocaleString('en-GB') : Number(value.toPrecision(3)).toString();
