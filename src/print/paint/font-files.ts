import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Weight } from '../layout/index.ts';

const PACKAGE = '@expo-google-fonts/source-sans-3';
const FILES: Readonly<Record<Weight, string>> = {
  regular: '400Regular/SourceSans3_400Regular.ttf',
  semibold: '600SemiBold/SourceSans3_600SemiBold.ttf',
  bold: '700Bold/SourceSans3_700Bold.ttf',
};

export const weights = ['regular', 'semibold', 'bold'] as const satisfies readonly Weight[];

const read = new Map<Weight, Buffer>();

/** The TrueType file of a weight, read once: it is embedded in every print. */
export function readFontFile(weight: Weight): Buffer {
  const known = read.get(weight);
  if (known !== undefined) return known;
  const file = createRequire(import.meta.url).resolve(`${PACKAGE}/${FILES[weight]}`);
  const bytes = readFileSync(file);
  read.set(weight, bytes);
  return bytes;
}
