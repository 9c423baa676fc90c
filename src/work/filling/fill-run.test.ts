import { describe, expect, it } from 'vitest';
import { inTins, type MakingBench, makeBatch } from '../../../test/workshop/build-making.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { FIVE, openFillingBench } from '../../../test/workshop/filling-bench.ts';
import { say, sayProblem } from '../../words/index.ts';

const at = openFillingBench();
const { makeBowl, startRun, fill, fillAll, closeRun, getLot } = at;

describe('a filling run', () => {
  it('aims at the label and the error of its scale, and knows what the law tolerates', async () => {
    const run = await startRun((await makeBowl()).id);
    expect(run).toMatchObject({
      number: 'LB-0001',
      state: 'filling',
      aimGrams: '35.01',
      // Two readings of half a step each.
      scale: { worstErrorGrams: '0.01' },
      // 9 % of 35 g is 3.15 g, taken up to 3.2 g (SI 2006/659 Schedule; Directive 76/211/EEC Annex I).
      tolerableErrorGrams: '3.2',
      limit1Grams: '31.8',
      limit2Grams: '28.6',
      bulkOnHandGrams: '189.8',
      summary: { filled: 0, stillToFill: 5, bowlHolds: 5, verdict: 'none-yet' },
      bestBefore: '2027-06-30',
      checks: [],
    });
    expect(say(run.sentence)).toBe('Fill 5 tins, 35.01 g each.');
  });

  it('counts gross less tare exactly, and the scale against the maker', async () => {
    const run = await startRun((await makeBowl()).id);
    await fillAll(run.id, '46.41', '46.40');
    const view = await at.bench.get('getRun', { params: { id: run.id } });
    expect(view.weights.map((row) => [row.netGrams, row.surelyGrams, row.verdict])).toEqual([
      ['35.01', '35', 'inside'],
      ['35', '34.99', 'too-light'],
    ]);
    expect(view.summary).toMatchObject({ verdict: 'reject', belowNominal: 1, bowlHolds: 3 });
    expect(say(view.sentence)).toContain('1 tin is too light');
  });

  it('calls a tin heavy that lies more than a twentieth of the label above the aim', async () => {
    const run = await startRun((await makeBowl()).id);
    // 35.01 + 0.05 x 35 = 36.76 g.
    await fillAll(run.id, '48.16', '48.17');
    const { weights } = await at.bench.get('getRun', { params: { id: run.id } });
    expect(weights.map((row) => row.verdict)).toEqual(['inside', 'heavy']);
  });

  it('closes with a lot of tins, everything booked, nothing unexplained', async () => {
    const batch = await makeBowl();
    const run = await startRun(batch.id);
    await fillAll(run.id, ...FIVE);
    const closed = await closeRun(run.id, { spoiltLabels: 1 });
    // 189.8 g in the bowl: 175.22 g in tins, 10 g kept, nothing left.
    expect(closed).toMatchObject({
      state: 'closed',
      closing: { units: 5, retainedGrams: '10', lostGrams: '4.58', leftGrams: '0' },
      bestBefore: '2027-06-30',
    });
    const tins = await getLot(closed.lotId);
    expect(tins.lot).toMatchObject({
      number: 'LB-0001',
      onHand: '5',
      unit: 'pieces',
      status: 'quarantine',
      bestBefore: '2027-06-30',
      fillingRunId: run.id,
    });
    const bowl = await getLot(batch.lotId);
    expect(bowl.lot.onHand).toBe('0');
    expect(bowl.places.find((place) => place.placeId === at.bench.places.retained)?.onHand).toBe('10');
    expect(bowl.movements.map((row) => [row.kind, row.change]).sort()).toEqual(
      [
        ['binned', '-4.58'],
        ['made', '189.8'],
        ['moved', '-10'],
        ['moved', '10'],
        ['used', '-175.22'],
      ].sort(),
    );
    const left = async (part: keyof MakingBench['lots']) => (await getLot(at.shop.lots[part])).lot.onHand;
    expect([await left('tin'), await left('lid'), await left('label')]).toEqual(['35', '35', '54']);
    const { movements } = await getLot(at.shop.lots.label);
    expect(movements.filter((row) => row.kind === 'broken').map((row) => row.change)).toEqual(['-1']);
  });

  it('fills one batch into two kinds of tin, the second with a letter, and keeps what is left', async () => {
    const batch = await makeBatch(
      at.bench,
      inTins(at.shop.mixtureRevision, [
        { productId: at.shop.product, units: 2 },
        { productId: at.shop.smallProduct, units: 3 },
      ]),
    );
    const large = await startRun(batch.id, { wanted: 2 });
    await fillAll(large.id, '46.45', '46.45');
    await closeRun(large.id, { leftGrams: '62' });
    const small = await startRun(batch.id, {
      productId: at.shop.smallProduct,
      wanted: 3,
      tareGrams: '8.2',
    });
    expect(small).toMatchObject({ number: 'LB-0001B', bulkOnHandGrams: '62', aimGrams: '20.01' });
    await fillAll(small.id, '28.25', '28.25', '28.25');
    const closed = await closeRun(small.id, {
      retained: { keep: false, reason: 'One was kept of the first run' },
    });
    expect(closed.closing).toMatchObject({ retainedGrams: null, lostGrams: '1.85' });
    expect(closed.closing?.declinedBecause).toBe('One was kept of the first run');
    const view = await at.bench.get('getBatch', { params: { id: batch.id } });
    expect(view.runs.map((run) => [run.number, run.productName, run.state])).toEqual([
      ['LB-0001', 'Lavender butter', 'closed'],
      ['LB-0001B', 'Lavender butter, small', 'closed'],
    ]);
    expect(view.lotOnHand).toBe('0');
  });

  it('knows what stands in the tins of another run that is open beside it', async () => {
    const batch = await makeBowl(10);
    const one = await startRun(batch.id, { wanted: 3 });
    const other = await startRun(batch.id, { wanted: 3 });
    await fillAll(one.id, '46.45', '46.45', '46.45');
    const seen = await at.bench.get('getRun', { params: { id: other.id } });
    // 370.31 g made, 105.15 g of it in the other run's tins: 7 more at 35.01 g.
    expect(seen.bulkOnHandGrams).toBe('370.31');
    expect(seen.summary.bowlHolds).toBe(7);
    await fillAll(other.id, '46.45');
    const closed = await closeRun(other.id, { leftGrams: '215' });
    expect(closed.closing).toMatchObject({ lostGrams: '5.11', leftGrams: '215' });
    expect(
      (await closeRun(one.id, { leftGrams: '205', retained: { keep: false, reason: 'Done' } })).closing,
    ).toMatchObject({ lostGrams: '10' });
  });
});

describe('a weight that cannot be meant', () => {
  it('is asked about where the tare was forgotten, and taken where the scale stood at nought', async () => {
    const run = await startRun((await makeBowl()).id);
    const forgotten = await fill(run.id, '46.45', { tareGrams: '0' });
    expect(codesOf(forgotten)).toEqual(['tare-forgotten']);
    if (!forgotten.ok && forgotten.problems[0])
      expect(sayProblem(forgotten.problems[0]).says).toContain('with it taken off it would be 35.05 g');
    expect(codesOf(await fill(run.id, '35.05', { tareGrams: '0' }))).toEqual([]);
  });

  it('knows the tin where the run was begun without a tare', async () => {
    const batch = await makeBowl();
    const run = await startRun(batch.id, { tareGrams: null });
    expect(run.tareGrams).toBe('11.4');
    const bare = await startRun(batch.id, { tareGrams: '0' });
    expect(codesOf(await fill(bare.id, '46.45'))).toEqual(['tare-forgotten']);
  });

  it('is asked about above twice the label, and taken where a person says that it is so', async () => {
    const run = await startRun((await makeBowl()).id);
    // Twice 35 g in a tin of 11.4 g.
    const above = await fill(run.id, '81.400001');
    expect(codesOf(above)).toEqual(['net-far-above-label']);
    if (!above.ok && above.problems[0]) {
      const said = sayProblem(above.problems[0]);
      expect(said.says).toContain('in a tin that states 35 g');
      expect(said.mend).toContain('Weigh again, or take another kind of tin');
    }
    expect(codesOf(await fill(run.id, '81.4'))).toEqual([]);
    expect(
      codesOf(await fill(run.id, '81.400001', { sure: ['net-far-above-label', 'reading-not-a-step'] })),
    ).toEqual([]);
    const { weights } = await at.bench.get('getRun', { params: { id: run.id } });
    expect(weights.map((row) => row.netGrams)).toEqual(['70', '70.000001']);
  });

  it('is refused whatever is said where the gross lies below the tare', async () => {
    const run = await startRun((await makeBowl()).id);
    expect(codesOf(await fill(run.id, '11.399999', { sure: ['net-far-above-label'] }))).toEqual([
      'net-not-above-nought',
    ]);
    expect(codesOf(await fill(run.id, '11.4', { sure: ['net-far-above-label'] }))).toEqual([
      'net-not-above-nought',
    ]);
  });

  it('is refused where nothing is in it, or ten times too much or too little', async () => {
    const run = await startRun((await makeBowl()).id);
    expect(codesOf(await fill(run.id, '11.4'))).toEqual(['net-not-above-nought']);
    expect(codesOf(await fill(run.id, '5'))).toEqual(['net-not-above-nought']);
    expect(codesOf(await fill(run.id, '361.4'))).toEqual(['reading-ten-times']);
    expect(codesOf(await fill(run.id, '14.9'))).toEqual(['reading-ten-times']);
    // 0.35 kg read as grams, 1.235 oz, and what nothing explains.
    expect(codesOf(await fill(run.id, '12.635'))).toEqual(['reading-other-unit']);
    expect(codesOf(await fill(run.id, '12.4'))).toEqual(['net-ten-times-off']);
    expect(codesOf(await fill(run.id, '17'))).toEqual([]);
  });
});
