import { z } from 'zod';
import * as f from './fields.ts';

/** Typed by a person, or a sentence of ours. */
export const words = z.union([z.string(), f.saying]);
export type Words = z.output<typeof words>;

export const linkedFile = z.object({
  id: f.id,
  name: z.string(),
  /** By what is in it. */
  kind: z.enum(['pdf', 'png', 'jpeg']),
  bytes: z.number(),
  sha256: z.string(),
});

export const chapter = z.object({
  /** What a file lies under, and what follows # in the address. */
  key: z.string(),
  level: z.union([z.literal(1), z.literal(2)]),
  title: words,
  /** Which law asks for it. */
  source: words.nullable(),
  /** `assessor`: left to the qualified assessor. */
  state: z.enum(['there', 'missing', 'assessor']),
  /** Of what is missing in the paper, how many things are missing here. */
  lacks: z.number(),
  says: z.array(words),
  cautions: z.array(words),
  entries: z.array(z.object({ label: words, text: words })),
  tables: z.array(
    z.object({
      caption: words,
      columns: z.array(z.object({ title: words, isNumber: z.boolean() })),
      rows: z.array(z.array(words)),
    }),
  ),
  files: z.array(linkedFile),
  /** Files may be put under it. */
  mayAttach: z.boolean(),
});
export type Chapter = z.output<typeof chapter>;

/** One thing that is missing, and where it is mended. */
export const gap = z.object({
  /** Key of the chapter that lacks it. */
  chapter: z.string(),
  says: f.saying,
  to: z.string(),
  /** The part of that page; null: its top. */
  hash: z.string().nullable(),
});
export type Gap = z.output<typeof gap>;

/** A document that is a page and a paper at once. */
export const writtenPaper = z.object({
  title: words,
  subtitle: words,
  sentence: f.saying,
  /** How old its data is: the last entry of the workshop. */
  asOf: f.instant,
  facts: z.array(z.object({ label: words, text: words })),
  missing: z.array(gap),
  chapters: z.array(chapter),
});
export type WrittenPaper = z.output<typeof writtenPaper>;
