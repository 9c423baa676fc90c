import { type KeepUntil, keepFileUntil } from '../../core/product-file/index.ts';
import { localDate } from '../local-date.ts';
import { labelRule } from './label-rule.ts';
import type { FileData } from './read-file-data.ts';

export interface ReleasedBatch {
  readonly runId: string;
  readonly batchId: string;
  readonly number: string;
  readonly madeOn: string;
  readonly releasedOn: string;
  readonly units: number;
  readonly sent: number;
}

/** Filling runs of the product that were released, the first first. */
export function releasedBatches({ runs, releases, closes, sold, house }: FileData): ReleasedBatch[] {
  return runs
    .flatMap((run) => {
      const release = releases.get(run.id);
      if (release?.verdict !== 'released') return [];
      return [
        {
          runId: run.id,
          batchId: run.batch_id,
          number: run.number,
          madeOn: localDate(run.made_at ?? run.started_at, house.timeZone),
          releasedOn: localDate(release.happened_at, house.timeZone),
          units: closes.get(run.id)?.units ?? 0,
          sent: sold.filter((row) => row.runId === run.id).reduce((sum, row) => sum + row.units, 0),
        },
      ];
    })
    .reverse();
}

const lastOf = (days: readonly string[]): string | null => [...days].sort().at(-1) ?? null;

/** Until when the file is kept, by what was placed on the market last. */
export function keptUntil(data: FileData): KeepUntil | null {
  const years = labelRule('pif-retention').keepYears;
  if (years === undefined) throw new Error('the tables say how long a file is kept');
  return keepFileUntil(
    {
      lastReleasedOn: lastOf(releasedBatches(data).map(({ releasedOn }) => releasedOn)),
      lastSentOn: lastOf(data.sold.map(({ sentAt }) => localDate(sentAt, data.house.timeZone))),
    },
    years,
  );
}
