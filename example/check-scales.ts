import type { BenchHand } from './bench-hand.ts';

/** Invented readings of ten weighings, in grams. */
const TESTS = {
  small: {
    weightGrams: '100',
    readings: ['100', '100.01', '100', '99.99', '100', '100.01', '100', '100', '100.01', '100'],
  },
  middle: {
    weightGrams: '1000',
    readings: ['1000', '1000.1', '1000', '1000', '1000.1', '1000', '999.9', '1000', '1000.1', '1000'],
  },
} as const;

/** What each morning's check was off, in hundredths or tenths of a gram; one morning the small scale stood in a draught. */
const OFF = {
  small: [0, 1, 0, -1, 1, 0, 0, 1, 2, 0, 1, -1, 0, 6, 1, 0, 1, 0, -1, 0, 1, 1, 0, 2, 1, 0],
  middle: [0, 0, 1, 0, -1, 0, 1, 0, 0, 1, 1, 0, 0, 1, -1, 0],
} as const;
const WEIGHTS = {
  small: { weightGrams: '100', toleranceGrams: '0.005', step: 100 },
  middle: { weightGrams: '1000', toleranceGrams: '0.05', step: 10 },
} as const;

type Tested = keyof typeof TESTS;
const TESTED = Object.keys(TESTS) as Tested[];

/** On the first evening both scales that scents and butters are weighed on are tested. */
export async function testScales(hand: BenchHand, scales: ReadonlyMap<string, string>): Promise<void> {
  hand.at(-42, 16);
  for (const key of TESTED) {
    const { weightGrams, readings } = TESTS[key];
    await hand.write(
      'recordScaleTest',
      { weightGrams, readings: [...readings] },
      { id: scales.get(key) ?? '' },
    );
  }
}

/** Some weeks of checks before the first weighing of the day; the last one yesterday. */
export async function checkScales(hand: BenchHand, scales: ReadonlyMap<string, string>): Promise<void> {
  for (const key of TESTED) {
    const id = scales.get(key) ?? '';
    const { weightGrams, toleranceGrams, step } = WEIGHTS[key];
    const check = (off: number) =>
      hand.write(
        'recordScaleCheck',
        { weightGrams, toleranceGrams, readingGrams: String((Number(weightGrams) * step + off) / step) },
        { id },
      );
    for (const [place, off] of OFF[key].entries()) {
      hand.at(place - OFF[key].length, 7, 40);
      await check(off);
      if (off > 2) await check(0);
    }
  }
}
