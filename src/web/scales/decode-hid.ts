import { exact, toText } from '../../core/quantity/index.ts';
import { gramsOfUnit, type MassUnit } from '../../core/weighing/index.ts';
import { noReading, type ScaleReading } from './reading.ts';

/**
 * Scale data report of the USB HID Point of Sale Usage Tables 1.02, weighing devices, usage page 0x8D: from memory,
 * check. Status, unit, exponent, weight; usages 0x70 to 0x78 and 0x50 to 0x5C in the order of the lists below.
 */
export const WEIGHING_PAGE = 0x8d;
const usageOf = (id: number): number => (WEIGHING_PAGE << 16) | id;
const DATA_WEIGHT = usageOf(0x40);
const DATA_SCALING = usageOf(0x41);
const STATUS = usageOf(0x70);
const UNIT = usageOf(0x50);

/** Usage 0x71 and on. */
const STATES = [
  'fault',
  'zero',
  'moving',
  'stable',
  'under-zero',
  'over-limit',
  'wants-calibration',
  'wants-zero',
] as const;
type State = (typeof STATES)[number];

/** Usage 0x51 and on; null: a tael is of another mass in every country. */
const UNITS: readonly (MassUnit | null)[] = [
  'mg',
  'g',
  'kg',
  'ct',
  null,
  'grain',
  'dwt',
  'tonne',
  'ton',
  'ozt',
  'oz',
  'lb',
];

/** Where a field lies in a report, as the device's own descriptor says. */
export interface HidField {
  readonly bitOffset: number;
  readonly bits: number;
  readonly isSigned: boolean;
}

export interface HidLayout {
  readonly reportId: number;
  /** As an index of the lists above; `first` is the value that means the first of them. */
  readonly status: HidField & { readonly first: number };
  readonly unit: HidField & { readonly first: number };
  readonly scaling: HidField;
  readonly weight: HidField;
}

/** The layout that scales of this class mostly have: report 3, one byte each, then two bytes of weight. */
export const USUAL_LAYOUT: HidLayout = {
  reportId: 3,
  status: { bitOffset: 0, bits: 8, isSigned: false, first: 1 },
  unit: { bitOffset: 8, bits: 8, isSigned: false, first: 1 },
  scaling: { bitOffset: 16, bits: 8, isSigned: true },
  weight: { bitOffset: 24, bits: 16, isSigned: false },
};

/** As a browser tells a device's report descriptor. */
export interface HidReport {
  readonly reportId: number;
  readonly items: readonly {
    readonly reportSize: number;
    readonly reportCount: number;
    readonly logicalMinimum: number;
    readonly isRange: boolean;
    readonly usages: readonly number[];
    readonly usageMinimum: number;
  }[];
}

/** The layout that a descriptor tells; undefined where it tells of no weight. */
export function layoutOf(reports: readonly HidReport[]): HidLayout | undefined {
  for (const { reportId, items } of reports) {
    const found: { -readonly [Part in keyof HidLayout]?: HidLayout[Part] } = {};
    let bitOffset = 0;
    for (const item of items) {
      const { reportSize: bits, reportCount, logicalMinimum } = item;
      const first = item.isRange ? item.usageMinimum : (item.usages[0] ?? 0);
      const field = { bitOffset, bits, isSigned: logicalMinimum < 0 };
      if (first === DATA_WEIGHT) found.weight = field;
      else if (first === DATA_SCALING) found.scaling = field;
      else if (isListOf(first, STATUS, STATES.length)) found.status = { ...field, first: logicalMinimum };
      else if (isListOf(first, UNIT, UNITS.length)) found.unit = { ...field, first: logicalMinimum };
      bitOffset += bits * reportCount;
    }
    const { status, unit, scaling, weight } = found;
    if (status && unit && scaling && weight) return { reportId, status, unit, scaling, weight };
  }
  return undefined;
}

const isListOf = (usage: number, list: number, length: number): boolean =>
  usage > list && usage <= list + length;

/** Bits of a report, the lowest first: HID reports are little-endian. */
function readField(bytes: Uint8Array, { bitOffset, bits, isSigned }: HidField): number | undefined {
  if (bitOffset + bits > bytes.length * 8) return undefined;
  let value = 0;
  for (let bit = 0; bit < bits; bit += 1) {
    const at = bitOffset + bit;
    const isSet = ((bytes[at >> 3] ?? 0) >> (at & 7)) & 1;
    value += isSet * 2 ** bit;
  }
  return isSigned && value >= 2 ** (bits - 1) ? value - 2 ** bits : value;
}

const TROUBLES: Partial<Record<State, 'fault' | 'over-limit' | 'wants-calibration' | 'wants-zero'>> = {
  fault: 'fault',
  'over-limit': 'over-limit',
  'wants-calibration': 'wants-calibration',
  'wants-zero': 'wants-zero',
};

/** What a scale data report tells, exactly in grams. Its weight has no sign: a state says that it lies below zero. */
export function decodeHidReport(bytes: Uint8Array, layout: HidLayout = USUAL_LAYOUT): ScaleReading {
  const [status, unitIndex, scaling, weight] = [
    layout.status,
    layout.unit,
    layout.scaling,
    layout.weight,
  ].map((field) => readField(bytes, field));
  if (status === undefined || unitIndex === undefined || scaling === undefined || weight === undefined)
    return noReading('not-understood');
  const state = STATES[status - layout.status.first];
  if (!state) return noReading('not-understood');
  const trouble = TROUBLES[state];
  if (trouble) return noReading(trouble);
  const unit = UNITS[unitIndex - layout.unit.first];
  if (!unit) return noReading('unit-unknown');
  const size = exact(weight).times(exact(10).pow(scaling));
  const value = state === 'under-zero' ? size.negated() : size;
  return {
    grams: toText(gramsOfUnit(value, unit)),
    isStable: state === 'stable' || state === 'zero',
    trouble: null,
    told: unit === 'g' ? null : { value: toText(value), unit },
  };
}
