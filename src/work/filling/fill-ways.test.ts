import { describe, expect, it } from 'vitest';
import { clearArea } from '../../../test/workshop/clear-area.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { FIVE, openFillingBench } from '../../../test/workshop/filling-bench.ts';

const at = openFillingBench();
const { makeBowl, start, startRun, fill, fillAll, closeRun } = at;
const getRun = (id: string) => at.bench.get('getRun', { params: { id } });

/** Mean 11.405 g; the next tin may be 0.103197 g heavier (core/filling/find-tare-spread.test.ts). */
const TARES = ['11.41', '11.38', '11.45', '11.40', '11.36', '11.43', '11.39', '11.42', '11.44', '11.37'];

describe('how tins are weighed', () => {
  it('by the mean of ten empty ones counts what the next may be heavier', async () => {
    const run = await startRun((await makeBowl()).id, { way: 'mean', tareGrams: null, tares: TARES });
    expect(run).toMatchObject({
      way: 'mean',
      tareGrams: '11.405',
      tares: TARES,
      errorGrams: '0.113197',
      scale: { worstErrorGrams: '0.01' },
      aimGrams: '35.12',
    });
    // 35.113197 is needed: 46.52 less the mean is 35.115, 46.51 less it 35.105.
    await fillAll(run.id, '46.52', '46.51');
    expect((await getRun(run.id)).weights.map((row) => row.verdict)).toEqual(['inside', 'too-light']);
  });

  it('changes in the run, and each weight keeps how it was weighed', async () => {
    const run = await startRun((await makeBowl()).id, { way: 'mean', tareGrams: null, tares: TARES });
    await fillAll(run.id, '46.52');
    const params = { id: run.id };
    const own = await at.bench.get('changeFillWay', { params, body: { way: 'own' } });
    expect(own).toMatchObject({ way: 'own', tareGrams: null, errorGrams: '0.01', tares: [] });
    expect(codesOf(await fill(run.id, '46.40'))).toEqual(['tare-missing']);
    expect(codesOf(await fill(run.id, '46.40', { tareGrams: '11.37' }))).toEqual([]);
    await at.bench.get('changeFillWay', { params, body: { way: 'net' } });
    await fillAll(run.id, '35.05');
    const { weights } = await getRun(run.id);
    expect(weights.map((row) => [row.way, row.netGrams, row.errorGrams, row.verdict])).toEqual([
      ['mean', '35.115', '0.113197', 'inside'],
      ['own', '35.03', '0.01', 'inside'],
      ['net', '35.05', '0.01', 'inside'],
    ]);
    expect((await closeRun(run.id)).summary).toMatchObject({ filled: 3, verdict: 'accept' });
    expect(await at.bench.get('checkUp')).toMatchObject({ isSound: true });
  });

  it('asks about an empty tin that is unlike the others, and takes it once somebody says that it is so', async () => {
    const batch = await makeBowl();
    const way = { way: 'mean', tareGrams: null, tares: ['11.4', '11.5', '114'] };
    const asked = await start(batch.id, way);
    expect(asked).toMatchObject({
      ok: false,
      problems: [
        {
          code: 'tare-odd',
          where: 'tares[2]',
          found: '114',
          allowed: '11.5',
          parameters: { number: 3, isSlip: 'yes' },
        },
      ],
    });
    const run = await startRun(batch.id);
    const params = { id: run.id };
    const wide = { way: 'mean' as const, tares: ['11.4', '11.5', '13'] };
    expect(codesOf(await at.bench.ask('changeFillWay', { params, body: wide }))).toEqual(['tare-odd']);
    const body = { ...wide, sure: ['tare-odd'] };
    expect(codesOf(await at.bench.ask('changeFillWay', { params, body }))).toEqual([]);
  });

  it('asks for a tare where the mean has none', async () => {
    const batch = await makeBowl();
    expect(codesOf(await start(batch.id, { way: 'mean', tareGrams: '0' }))).toEqual(['tare-missing']);
  });
});

describe('a tin that is too light', () => {
  it('is filled up and weighed again: both weights stand, and the later counts', async () => {
    const run = await startRun((await makeBowl()).id);
    await fillAll(run.id, '46.30');
    const [light] = (await getRun(run.id)).weights;
    expect(light).toMatchObject({ verdict: 'too-light', gramsToAdd: '0.11' });
    expect(codesOf(await fill(run.id, '46.45', { refillOf: light?.entryId }))).toEqual([]);
    await fillAll(run.id, '46.50');
    const view = await getRun(run.id);
    expect(view.weights.map((row) => [row.number, row.netGrams, row.isRefilled])).toEqual([
      [1, '34.9', true],
      [1, '35.05', false],
      [2, '35.1', false],
    ]);
    expect(view.summary).toMatchObject({ filled: 2, tooLight: 0, verdict: 'accept' });
    expect(view.bowlLeftGrams).toBe('119.65');
    const body = { entryId: light?.entryId ?? '', reason: 'Slip', fate: 'slip' as const };
    expect(codesOf(await at.bench.ask('strikeFill', { params: { id: run.id }, body }))).toEqual([
      'tin-weighed-again',
    ]);
    expect(codesOf(await fill(run.id, '46.46', { refillOf: light?.entryId }))).toEqual(['tin-not-there']);
  });

  it('and holds no more once it was filled up is asked about: another tin stands there, or one was misread', async () => {
    const run = await startRun((await makeBowl()).id);
    await fillAll(run.id, '46.20');
    const refillOf = (await getRun(run.id)).weights[0]?.entryId;
    for (const gross of ['45.00', '46.20'])
      expect(codesOf(await fill(run.id, gross, { refillOf }))).toEqual(['refilled-not-heavier']);
    const sure = ['refilled-not-heavier'];
    expect(codesOf(await fill(run.id, '46.20', { refillOf, sure }))).toEqual([]);
    expect((await getRun(run.id)).weights.map((row) => row.sure)).toEqual([[], sure]);
  });

  it('keeps what was taken off it, however tins are weighed by then: nobody weighs a full tin empty', async () => {
    const run = await startRun((await makeBowl()).id, { way: 'mean', tareGrams: null, tares: TARES });
    await fillAll(run.id, '46.40');
    const params = { id: run.id };
    await at.bench.get('changeFillWay', { params, body: { way: 'own' } });
    const refillOf = (await getRun(run.id)).weights[0]?.entryId;
    expect(codesOf(await fill(run.id, '46.52', { refillOf }))).toEqual([]);
    expect((await getRun(run.id)).weights[1]).toMatchObject({
      way: 'mean',
      tareGrams: '11.405',
      netGrams: '35.115',
      errorGrams: '0.113197',
      verdict: 'inside',
    });
    expect(await at.bench.get('checkUp')).toMatchObject({ isSound: true });
  });

  it('is put aside with its fate: what does not go back to the bowl is booked as such', async () => {
    const batch = await makeBowl();
    const run = await startRun(batch.id);
    await fillAll(run.id, '46.30', '46.31', '46.32', '46.50');
    const { weights } = await getRun(run.id);
    const fates = ['bowl', 'trial', 'binned'] as const;
    for (const [index, fate] of fates.entries()) {
      const body = { entryId: weights[index]?.entryId ?? '', reason: fate, fate };
      await at.bench.get('strikeFill', { params: { id: run.id }, body });
    }
    const view = await getRun(run.id);
    expect(view.weights.map((row) => row.fate)).toEqual([...fates, null]);
    // 189.8 less one tin of 35.1 g, 34.91 g to be tried and 34.92 g thrown away.
    expect(view).toMatchObject({ bowlLeftGrams: '84.87', summary: { putAside: 2, filled: 1 } });
    await closeRun(run.id, { leftGrams: '70', spoiltTins: 2 });
    const { movements } = await at.getLot(batch.lotId);
    const gone = movements.filter((row) => row.reason === 'tins put aside');
    expect(gone.map((row) => [row.kind, row.change]).sort()).toEqual([
      ['binned', '-34.92'],
      ['tester', '-34.91'],
    ]);
  });
});

describe('a reading that looks like a slip', () => {
  it('is taken once a person says that it is so, and the answer is kept with it', async () => {
    const run = await startRun((await makeBowl()).id);
    await fillAll(run.id, '46.45');
    expect(codesOf(await fill(run.id, '46.45', { sure: [] }))).toEqual(['reading-same-as-last']);
    expect(codesOf(await fill(run.id, '46.45'))).toEqual([]);
    const { weights } = await getRun(run.id);
    expect(weights.map((row) => row.sure)).toEqual([[], ['reading-same-as-last']]);
  });
});

describe('before the first tin', () => {
  const bare = async (purpose: 'sale' | 'trial' = 'sale') => {
    const run = await start((await makeBowl(5, purpose)).id);
    if (!run.ok) throw new Error(codesOf(run).join(', '));
    return run.value.id;
  };
  const say = (id: string, word: object) =>
    at.bench.ask('prepareRun', { params: { id }, body: { word: word as never } });

  it('of tins for sale somebody says that the bench is clear; of a trial nobody has to', async () => {
    const id = await bare();
    expect(codesOf(await fill(id, '46.45'))).toEqual(['area-not-cleared']);
    await clearArea(at.bench, id);
    expect(codesOf(await fill(id, '46.45'))).toEqual([]);
    expect(codesOf(await fill(await bare('trial'), '46.45'))).toEqual([]);
  });

  it('a bench that is not clear needs a reason, which the release shows', async () => {
    const id = await bare();
    expect(codesOf(await say(id, { kind: 'area', isClear: false }))).toEqual(['area-reason-missing']);
    await say(id, { kind: 'area', isClear: false, reason: 'Labels of the balm, in their box' });
    await fillAll(id, ...FIVE);
    const { checks } = await closeRun(id);
    expect(checks.find(({ check }) => check === 'area')).toMatchObject({ isPassed: true, isToSee: true });
  });

  it('pieces are counted out, and what is missing at the end is told', async () => {
    const id = await bare();
    await clearArea(at.bench, id);
    await say(id, { kind: 'containers', method: 'alcohol' });
    await say(id, { kind: 'issued', tins: 8, lids: 8, labels: 6 });
    await fillAll(id, ...FIVE);
    expect(codesOf(await at.close(id, { backTins: 4 }))).toEqual(['more-than-counted-out']);
    const closed = await closeRun(id, { spoiltTins: 1, backTins: 2, backLids: 2, backLabels: 1 });
    expect(closed.closing?.counts.map((row) => [row.part, row.missing])).toEqual([
      ['tin', 0],
      ['lid', 1],
      ['label', 0],
    ]);
    expect(closed.checks.find(({ check }) => check === 'counts')).toMatchObject({ isToSee: true });
    expect(closed.checks.find(({ check }) => check === 'containers')?.isToSee).toBeUndefined();
  });
});

describe('what earlier runs teach', () => {
  async function oneBatch(...gross: readonly string[]): Promise<string> {
    const run = await startRun((await makeBowl()).id);
    await fillAll(run.id, ...gross);
    return (await closeRun(run.id)).id;
  }

  it('is the spread, from ten tins of two runs on, and what to aim at by it', async () => {
    await oneBatch(...FIVE);
    const batch = await makeBowl();
    const query = { productId: at.shop.product, scaleId: at.shop.scales.small, wanted: '5' };
    const ask = () =>
      at.bench.get('adviseAim', {
        params: { id: batch.id },
        query: { ...query, tareGrams: '', errorGrams: '', allowanceGrams: '', tareSpreadGrams: '' },
      });
    expect(await ask()).toMatchObject({ decidedBy: 'scale', learnt: null, aimGrams: '35.01' });
    await oneBatch('46.45', '46.65', '46.55', '46.75', '46.85');
    const advice = await ask();
    // Within the runs: squares of 0.00492 and 0.1 over 8 degrees of freedom (worked by hand).
    expect(advice).toMatchObject({
      decidedBy: 'coverage',
      learnt: { tins: 10, from: 'product', spreadGrams: '0.115' },
      aimGrams: '35.24',
    });
    expect(Number(advice.giveawayMoney)).toBeGreaterThan(0);
    expect(advice.lower?.shortOneIn).toBeGreaterThan(1);
  });

  it('is what stays behind, from three batches on: it sizes the next, unless the maker sets another', async () => {
    for (const _ of [1, 2, 3]) await oneBatch(...FIVE);
    const wish = {
      revisionId: at.shop.mixtureRevision,
      purpose: 'sale' as const,
      markets: ['GB' as const],
    };
    const sized = async (lossPercent: string | null) => {
      const retained = { keep: true as const, grams: '10' };
      const tins = [{ productId: at.shop.product, units: 2 }];
      const size = { by: 'tins' as const, tins, retained, lossPercent };
      const plan = await at.bench.get('planBatch', { body: { ...wish, size } });
      return plan.sizing.find(({ code }) => code === 'sizing-bowl-loss')?.parameters;
    };
    expect(await sized(null)).toMatchObject({ from: 'formula', batches: 3, percent: '2.9' });
    expect(await sized('5')).toMatchObject({ from: 'set', percent: '5', learnt: '2.9' });
  });
});
