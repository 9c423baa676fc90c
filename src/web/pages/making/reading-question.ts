import { readDecimal, toText } from '../../../core/quantity/index.ts';
import { askAboutReading, type ReadingQuestion } from '../../../core/weighing/index.ts';
import type { Addition } from './batch.ts';
import type { Band } from './weigh-band.ts';
import { bandVerdict } from './weight-verdict.ts';

interface Read {
  readonly net: string;
  /** What the scale shows, with a vessel on it. */
  readonly gross?: string | null;
  readonly band: Band;
  readonly isPart: boolean;
  /** What the vessel weighs that was used last; null where its tare is taken off already. */
  readonly lastTare: string | null;
  /** The weighing before, wherever it was. */
  readonly last: { readonly grams: string; readonly isHere: boolean } | null;
  readonly scale: { readonly readabilityGrams: string; readonly capacityGrams: string } | null;
}

/** The same question as the workshop asks, asked here first: it needs nobody to answer, and works while it is away. */
export function questionOf({
  net,
  gross = null,
  band,
  isPart,
  lastTare,
  last,
  scale,
}: Read): ReadingQuestion | null {
  const read = readDecimal(net, 'grams');
  if (!read.ok) return null;
  const shown = gross === null ? read : readDecimal(gross, 'gross');
  const isOff = bandVerdict(net, band) !== 'inside';
  return askAboutReading({
    grams: read.value,
    grossGrams: shown.ok ? shown.value : null,
    targetGrams: isPart ? null : band.targetGrams,
    readabilityGrams: scale?.readabilityGrams ?? null,
    capacityGrams: scale?.capacityGrams ?? null,
    lastGrams: last && (last.isHere || isOff) ? last.grams : null,
    tareGrams: lastTare,
  });
}

/** What was meant, where the question has an answer to offer. */
export function meantBy({ parameters }: ReadingQuestion): string | null {
  const meant = parameters?.netGrams ?? parameters?.gramsThen;
  if (meant === undefined) return null;
  const read = readDecimal(String(meant), 'grams');
  return read.ok && read.value.gt(0) ? toText(read.value.toDecimalPlaces(6)) : null;
}

/** The newest weighing that stands in the batch. */
export function lastWeighing(screens: readonly { readonly kind: string }[], position: number): Read['last'] {
  const entries = screens.flatMap((screen) =>
    screen.kind === 'addition'
      ? (screen as Addition).entries.map((entry) => ({ entry, at: (screen as Addition).position }))
      : [],
  );
  const newest = entries.sort((one, other) => Date.parse(one.entry.at) - Date.parse(other.entry.at)).at(-1);
  return newest ? { grams: newest.entry.actualGrams, isHere: newest.at === position } : null;
}
