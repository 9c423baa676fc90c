import { z } from 'zod';
import { kept } from '../api/kept.ts';
import { makeStore } from '../api/make-store.ts';
import type { LinePattern } from './decode-line.ts';

const place = z.number().int().min(1).max(200).nullable();
const settings = z.strictObject({
  baudRate: z.number().int().min(110).max(921_600),
  dataBits: z.union([z.literal(7), z.literal(8)]),
  parity: z.enum(['none', 'even', 'odd']),
  stopBits: z.union([z.literal(1), z.literal(2)]),
  numberFrom: place,
  numberLength: place,
  unit: z.enum(['line', 'g', 'kg', 'mg', 'oz', 'lb', 'ozt', 'ct', 'grain', 'dwt']),
  stableMark: z.string().max(20),
  movingMark: z.string().max(20),
  settlesBy: z.enum(['mark', 'equal']),
});
export type ReaderSettings = z.output<typeof settings>;

/** As serial scales mostly are set when they leave their box (common practice, no source). */
export const USUAL_SETTINGS: ReaderSettings = {
  baudRate: 9600,
  dataBits: 8,
  parity: 'none',
  stopBits: 1,
  numberFrom: null,
  numberLength: null,
  unit: 'line',
  stableMark: '',
  movingMark: '',
  settlesBy: 'equal',
};

/** Kinds of line that a booklet may describe; each is a start that may be changed. */
export const PRESETS = {
  'number-and-unit': USUAL_SETTINGS,
  'state-first': { ...USUAL_SETTINGS, stableMark: 'ST', settlesBy: 'mark' },
  'mark-while-moving': { ...USUAL_SETTINGS, movingMark: '?', settlesBy: 'mark' },
  'older-serial': { ...USUAL_SETTINGS, baudRate: 2400, dataBits: 7, parity: 'even' },
} as const satisfies Record<string, ReaderSettings>;

export const readSettings = (given: unknown): ReaderSettings | undefined => {
  const read = settings.safeParse(given);
  return read.success ? read.data : undefined;
};

const KEY = 'scale-reader';

function keptSettings(): ReaderSettings {
  try {
    return readSettings(JSON.parse(kept.read(KEY) ?? 'null')) ?? USUAL_SETTINGS;
  } catch {
    // Not ours, or written by another edition of the page: as usual.
    return USUAL_SETTINGS;
  }
}

/** How the scale at this tablet writes; kept on this tablet. */
export const readerSettings = makeStore<ReaderSettings>(keptSettings());

export function keepSettings(next: ReaderSettings): void {
  readerSettings.write(next);
  kept.write(KEY, JSON.stringify(next));
}

export const patternOf = ({
  numberFrom,
  numberLength,
  unit,
  stableMark,
  movingMark,
}: ReaderSettings): LinePattern => ({ numberFrom, numberLength, unit, stableMark, movingMark });
