import type { z } from 'zod';
import type { productFiles } from '../../contract/index.ts';
import { done, type Result } from '../../core/problem.ts';
import { exposureProductTypes } from '../../reference/index.ts';
import type { Context } from '../context.ts';
import { saying } from '../saying.ts';
import { keptUntil, releasedBatches } from './file-batches.ts';
import { fileChapters } from './file-chapters.ts';
import { listGaps } from './list-gaps.ts';
import { readPoints } from './points-of-departure.ts';
import { type FileData, readFileData } from './read-file-data.ts';
import { type Chapter, entry, type Gap } from './write-chapter.ts';

export type FileView = z.output<typeof productFiles.productFileView>;

export async function viewFile(
  context: Context,
  id: string,
): Promise<Result<{ readonly view: FileView; readonly data: FileData }>> {
  const data = await readFileData(context, id);
  if (!data.ok) return data;
  const points = await readPoints(context.storage.db);
  return done({ view: viewOf(data.value, points), data: data.value });
}

function viewOf(data: FileData, points: readonly productFiles.PointOfDeparture[]): FileView {
  const missing = listGaps(data);
  const kept = keptUntil(data);
  const chapters = fileChapters(data, points).map((one, _, all) => withLacks(one, all, missing));
  return {
    title: saying('pf-title', { product: data.product.name }),
    subtitle: saying('pf-prepared'),
    sentence: saying('pf-says', {
      product: data.product.name,
      n: missing.length,
      parts: new Set(missing.map(({ chapter }) => chapter)).size,
      of: chapters.length,
    }),
    asOf: data.asOf,
    facts: [
      entry(saying('pf-fact-batches'), String(releasedBatches(data).length)),
      entry(saying('pf-fact-complaints'), String(data.complaints.length)),
      entry(saying('pf-fact-kept'), kept ? saying('pf-day', { on: kept.until }) : saying('pf-kept-not-yet')),
    ],
    missing,
    chapters,
    productId: data.id,
    productName: data.product.name,
    version: data.version,
    details: data.file,
    materials: [...(data.made?.opened.materials ?? [])].map(([id, { name, role }]) => ({ id, name, role })),
    exposureTypes: exposureProductTypes.map(({ id, label }) => ({ id, name: label })),
    keptUntil: kept?.until ?? null,
  };
}

/** What is missing keeps a chapter from being complete wherever it is mended; the safety report is all of its parts. */
function withLacks(one: Chapter, all: readonly Chapter[], missing: readonly Gap[]): Chapter {
  const parts = one.key === REPORT ? all.filter(({ level }) => level === 2) : [one];
  const lacks = missing.filter(({ chapter }) => parts.some(({ key }) => key === chapter)).length;
  return { ...one, lacks, state: lacks > 0 && one.state === 'there' ? 'missing' : one.state };
}

const REPORT = 'safety-report';
