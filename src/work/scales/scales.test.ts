import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { checkUp } from '../../storage/index.ts';

let bench: TestWorkshop;
let id: string;

const SMALL = {
  name: 'Small scale',
  capacityGrams: '200',
  readabilityGrams: '0.01',
  repeatabilityGrams: null,
  accuracyClass: null,
  verificationIntervalGrams: null,
  checkWeightGrams: '100',
  checkToleranceGrams: '0.005',
} as const;
const TEN = ['100', '100.01', '100', '99.99', '100', '100.01', '100', '100', '99.99', '100'];

const scaleNow = async () => (await bench.get('getWorkshop')).scales.find((scale) => scale.id === id);
const change = async (more: object) =>
  bench.ask('saveScale', {
    body: { scale: { ...SMALL, id, version: (await scaleNow())?.version ?? 0, ...more } },
  });
const test = (readings: readonly string[] = TEN) =>
  bench.ask('recordScaleTest', { params: { id }, body: { weightGrams: '100', readings: [...readings] } });
const check = (readingGrams: string, more: object = {}) =>
  bench.ask('recordScaleCheck', {
    params: { id },
    body: { weightGrams: '100', toleranceGrams: '0.005', readingGrams, ...more },
  });

beforeEach(async () => {
  bench = await openTestWorkshop();
  id = (await bench.get('saveScale', { body: { scale: SMALL } })).id;
});
afterEach(() => bench.close());

describe('the test of ten weighings', () => {
  it('stands with who, when, weight and readings, and the plan counts with it from then on', async () => {
    expect((await scaleNow())?.repeatability).toBeNull();
    bench.setClock('2026-11-26T09:00:00Z');
    expect((await test()).ok).toBe(true);
    const { tests } = await bench.get('getScaleRecord', { params: { id } });
    expect(tests).toMatchObject([
      {
        at: '2026-11-26T09:00:00Z',
        by: 'Ada Quill',
        weightGrams: '100',
        readings: TEN,
        meanGrams: '100',
        isUsed: true,
      },
    ]);
    expect(Number(tests[0]?.deviationGrams)).toBeCloseTo(Math.sqrt(0.0004 / 9), 11);
    expect((await scaleNow())?.repeatability).toMatchObject({
      from: 'measured',
      since: '2026-11-26T09:00:00Z',
    });
  });

  it('gives way to what is typed later, and to a later test again', async () => {
    await test();
    bench.setClock('2026-11-26T10:00:00Z');
    await change({ repeatabilityGrams: '0.02' });
    expect((await scaleNow())?.repeatability).toEqual({
      grams: '0.02',
      from: 'typed',
      since: '2026-11-26T10:00:00Z',
    });
    // Another change leaves it as old as it is.
    bench.setClock('2026-11-26T11:00:00Z');
    await change({ repeatabilityGrams: '0.02', name: 'Scale for scents' });
    expect((await scaleNow())?.repeatability?.since).toBe('2026-11-26T10:00:00Z');
    await test();
    expect((await scaleNow())?.repeatability?.from).toBe('measured');
    const { tests } = await bench.get('getScaleRecord', { params: { id } });
    expect(tests.map(({ isUsed }) => isUsed)).toEqual([true, false]);
  });

  it('told late gives way to a test that was made later', async () => {
    bench.setClock('2026-11-26T10:00:00Z');
    await test();
    const used = (await scaleNow())?.repeatability;
    const coarse = TEN.map((reading, place) => (place % 2 === 0 ? reading : '100.1'));
    await bench.get('recordScaleTest', {
      params: { id },
      body: {
        weightGrams: '100',
        readings: coarse,
        stamp: bench.stamp({ at: '2026-11-26T09:00:00Z' }),
      },
    });
    expect((await scaleNow())?.repeatability).toEqual(used);
    const { tests } = await bench.get('getScaleRecord', { params: { id } });
    expect(tests.map(({ at, isUsed }) => [at.slice(11, 16), isUsed])).toEqual([
      ['10:00', true],
      ['09:00', false],
    ]);
  });

  it('says nothing of a scale whose step is another by now', async () => {
    await test();
    await change({ readabilityGrams: '0.1' });
    expect((await scaleNow())?.repeatability).toBeNull();
  });

  it('is refused where there are nine readings, or one that the scale cannot have shown', async () => {
    expect(codesOf(await test(TEN.slice(1)))).toEqual(['test-too-few']);
    expect(codesOf(await test([...TEN.slice(1), '100.005']))).toEqual(['reading-not-a-step']);
    expect(codesOf(await test([...TEN.slice(1), '200.01']))).toEqual(['reading-above-capacity']);
    expect((await bench.get('getScaleRecord', { params: { id } })).tests).toEqual([]);
  });
});

describe('the daily check', () => {
  it('is due until it was good today, and on the next day again', async () => {
    expect((await scaleNow())?.check).toMatchObject({
      isDue: true,
      isHeld: false,
      lastAt: null,
      limitGrams: '0.015',
    });
    await check('100.01');
    expect((await scaleNow())?.check).toMatchObject({ isDue: false, isHeld: false, isGood: true });
    bench.setClock('2026-11-26T23:59:00Z');
    expect((await scaleNow())?.check?.isDue).toBe(false);
    bench.setClock('2026-11-27T00:00:00Z');
    expect((await scaleNow())?.check?.isDue).toBe(true);
  });

  it('that is not good holds the scale, over night too, until one is', async () => {
    await check('100.02');
    expect((await scaleNow())?.check).toMatchObject({ isDue: true, isHeld: true, isGood: false });
    bench.setClock('2026-11-28T08:00:00Z');
    expect((await scaleNow())?.check?.isHeld).toBe(true);
    expect(codesOf(await change({ checkWeightGrams: null }))).toEqual(['held-scale-keeps-weight']);
    // Whatever would let it pass without having become right.
    expect(codesOf(await change({ checkWeightGrams: '50' }))).toEqual(['held-scale-keeps-weight']);
    expect(codesOf(await change({ checkToleranceGrams: '5' }))).toEqual(['held-scale-keeps-weight']);
    expect(codesOf(await change({ readabilityGrams: '1' }))).toEqual(['held-scale-keeps-weight']);
    await check('99.99');
    expect((await scaleNow())?.check).toMatchObject({ isDue: false, isHeld: false, isGood: true });
    const { checks } = await bench.get('getScaleRecord', { params: { id } });
    expect(checks).toMatchObject([
      { isGood: true, deviationGrams: '-0.01', on: '2026-11-28', by: 'Ada Quill', limitBy: 'readability' },
      { isGood: false, deviationGrams: '0.02', on: '2026-11-26' },
    ]);
  });

  it('is judged by what the scale’s own weight may be off, whatever comes with it', async () => {
    await check('100.1');
    await check('60', { toleranceGrams: '50' });
    expect((await scaleNow())?.check?.isHeld).toBe(true);
    const { checks } = await bench.get('getScaleRecord', { params: { id } });
    expect(checks[0]).toMatchObject({ toleranceGrams: '0.005', limitGrams: '0.015', isGood: false });
  });

  it('with another weight than its own is kept, may hold the scale, and never frees it', async () => {
    await check('100.1');
    await check('1', { weightGrams: '1', toleranceGrams: '0' });
    expect((await scaleNow())?.check).toMatchObject({ isHeld: true, isDue: true, isGood: false });
    expect((await bench.get('getScaleRecord', { params: { id } })).checks).toHaveLength(2);
    // The same mass written otherwise is the same weight.
    await check('100', { weightGrams: '100.00' });
    expect((await scaleNow())?.check).toMatchObject({ isHeld: false, isDue: false });
    await check('1.1', { weightGrams: '1', toleranceGrams: '0' });
    expect((await scaleNow())?.check?.isHeld).toBe(true);
  });

  it('of a scale without a weight of its own frees nothing either, and it may be given one then', async () => {
    await change({ checkWeightGrams: null });
    await check('105');
    await check('100');
    expect((await change({ checkWeightGrams: null })).ok).toBe(true);
    await change({});
    expect((await scaleNow())?.check?.isHeld).toBe(true);
    await check('100');
    expect((await scaleNow())?.check?.isHeld).toBe(false);
  });

  it('told late says nothing against a later one, good or not, whatever the offset of its clock', async () => {
    const stampAt = (at: string) => ({ stamp: bench.stamp({ at }) });
    bench.setClock('2026-11-26T11:00:00Z');
    await check('100.1', stampAt('2026-11-26T09:00:00Z'));
    await check('100', stampAt('2026-11-26T10:30:00+02:00'));
    expect((await scaleNow())?.check).toMatchObject({ isHeld: true, lastAt: '2026-11-26T09:00:00Z' });
    await check('100', stampAt('2026-11-26T10:00:00Z'));
    await check('100.1', stampAt('2026-11-26T08:00:00Z'));
    expect((await scaleNow())?.check).toMatchObject({ isHeld: false, lastAt: '2026-11-26T10:00:00Z' });
    const { checks } = await bench.get('getScaleRecord', { params: { id } });
    expect(checks.map(({ isGood }) => isGood)).toEqual([true, false, true, false]);
  });

  it('lies by the clock of the workshop', async () => {
    bench.setClock('2026-07-01T23:30:00Z');
    await check('100');
    const { checks } = await bench.get('getScaleRecord', { params: { id } });
    // British summer time: half past midnight.
    expect(checks[0]?.on).toBe('2026-07-02');
  });

  it('counts with what was measured of the scale by then', async () => {
    await test(['100', '100.03', '100', '99.97', '100', '100.03', '100', '100', '99.97', '100']);
    expect((await scaleNow())?.check).toMatchObject({ limitGrams: '0.045', limitBy: 'repeatability' });
    expect((await check('100.04')).ok).toBe(true);
    expect((await scaleNow())?.check?.isHeld).toBe(false);
  });

  it('is no check where the reading is none of the scale’s, or the weight too heavy for it', async () => {
    expect(codesOf(await check('100.001'))).toEqual(['reading-not-a-step']);
    expect(codesOf(await check('1000'))).toEqual(['reading-above-capacity']);
    expect(codesOf(await check('200', { weightGrams: '500' }))).toEqual(['check-weight-too-heavy']);
    expect(codesOf(await change({ checkWeightGrams: '500' }))).toEqual(['check-weight-too-heavy']);
    expect((await scaleNow())?.check?.lastAt).toBeNull();
  });

  it('sent twice counts once, and a scale that is not there is told', async () => {
    const stamp = bench.stamp();
    await check('100', { stamp });
    await check('100', { stamp });
    expect((await bench.get('getScaleRecord', { params: { id } })).checks).toHaveLength(1);
    expect(codesOf(await bench.ask('getScaleRecord', { params: { id: 'none' } }))).toEqual([
      'thing-not-found',
    ]);
  });
});

it('proposes weights near half of what the scale holds and near what is weighed on it', async () => {
  expect((await bench.get('getScaleRecord', { params: { id } })).proposedWeights).toEqual([100]);
});

it('leaves a sound file', async () => {
  await test();
  await check('100');
  await check('101');
  expect((await checkUp(bench.context.storage)).filter(({ wrong }) => wrong.length > 0)).toEqual([]);
});
