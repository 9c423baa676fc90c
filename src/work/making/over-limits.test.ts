import { describe, expect, it } from 'vitest';
import { buildReport } from '../../../test/workshop/build-formula.ts';
import { inGrams, makeAll, makeFirmBase } from '../../../test/workshop/build-making.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openMakingBench, type Started } from '../../../test/workshop/making-bench.ts';
import { say, sayProblem } from '../../words/index.ts';

const at = openMakingBench();
const { weigh, additionAt } = at;

/** A batch of 100 g, 1 % of it lavender oil, of which the report allows 1.5 %. */
async function startMixture(purpose: 'sale' | 'trial' = 'sale'): Promise<Started> {
  await makeFirmBase(at.bench, at.shop, '800');
  return at.bench.get('startBatch', {
    body: { wish: inGrams(at.shop.mixtureRevision, '100', { purpose }) },
  });
}
const SCENT = 1;
const deviation = { what: 'Too much oil', why: 'The bottle slipped' };
const viewOf = (id: string) => at.bench.get('getBatch', { params: { id } });

describe('too much weighed in, as against limits and report', () => {
  it('is told before it counts, however well it is explained', async () => {
    const batch = await startMixture();
    expect(additionAt(batch, SCENT).targetGrams).toBe('1');
    const refused = await weigh(batch, SCENT, '7', { deviation });
    expect(codesOf(refused)).toEqual(['weighed-over-limits']);
    const [first] = refused.ok ? [] : refused.problems;
    expect(first && sayProblem(first).says).toContain('Lavender oil');
    expect((await viewOf(batch.id)).screens.every((screen) => screen.done === null)).toBe(true);
  });

  it('is told before it is asked what happened, so that it is explained once', async () => {
    const batch = await startMixture();
    expect(codesOf(await weigh(batch, SCENT, '7'))).toEqual(['weighed-over-limits']);
    expect(codesOf(await weigh(batch, SCENT, '1.2'))).toEqual(['weight-outside-band']);
    expect(codesOf(await weigh(batch, SCENT, '7', { deviation, isOverKnown: true }))).toEqual([]);
  });

  it('is told as well where what is left out would make it so: that is all there is of the rest', async () => {
    const batch = await startMixture();
    await weigh(batch, 0, '50', { isPart: true });
    const close = (more: object = {}) =>
      at.bench.ask('closeAddition', {
        params: { id: batch.id },
        body: { position: 0, deviation: { what: 'Only 50 g', why: 'The tub was empty' }, ...more },
      });
    const refused = await close();
    expect(codesOf(refused)).toEqual(['closed-over-limits']);
    const [first] = refused.ok ? [] : refused.problems;
    expect(first && sayProblem(first).says).toContain('Quiet base: with 50 g and no more of it');
    expect((await viewOf(batch.id)).asWeighed).toBeNull();
    expect(codesOf(await close({ isOverKnown: true }))).toEqual([]);
    expect((await viewOf(batch.id)).asWeighed).not.toBeNull();
  });

  it('says whose limit it is, how much would be allowed, and how much of the rest would bring it within', async () => {
    const batch = await startMixture();
    const refused = await weigh(batch, SCENT, '7', { deviation });
    const [first] = refused.ok ? [] : refused.problems;
    const { says, mend } = first ? sayProblem(first) : { says: '', mend: '' };
    expect(says).toBe(
      'With 7 g of Lavender oil in it the batch may not be sold. Weighed in was more than the limits or the report allow. Lavender oil is 6.604 %; the assessor’s report R-1 allows at most 1.5 % (Great Britain and Northern Ireland).',
    );
    // By hand: x / (99 + x) = 1.5 % at 1.5076 g; 7 / (99 + y + 7) = 1.5 % at y = 360.67 g, told on the allowed side.
    expect(mend).toContain('at most 1.507 g of Lavender oil are allowed');
    expect(mend).toContain('at least 360.7 g more of Quiet base');
    expect(mend).toContain('goes on like a trial');
  });

  it('says first that the earlier weighings are wrong where the planned amount would not be right either', async () => {
    const batch = await startMixture();
    await weigh(batch, 0, '60', { deviation, isOverKnown: true });
    const refused = await weigh(batch, SCENT, '2', { deviation });
    const [first] = refused.ok ? [] : refused.problems;
    expect(first && sayProblem(first).mend).toContain('The planned 1 g of Lavender oil would not be right');
  });

  it('counts once the person was told and says why, and the batch shows it until it is resolved', async () => {
    const batch = await startMixture();
    expect(batch.asWeighed).toBeNull();
    const weighed = await weigh(batch, SCENT, '7', { deviation, isOverKnown: true });
    expect(codesOf(weighed)).toEqual([]);
    const { asWeighed } = await viewOf(batch.id);
    expect(asWeighed && say(asWeighed)).toBe(
      'Weighed in was more than the limits or the report allow. Lavender oil is 6.604 %; the assessor’s report R-1 allows at most 1.5 % (Great Britain and Northern Ireland).',
    );
    const entryId = weighed.ok ? weighed.value.entryId : '';
    const body = { entryId, reason: 'Poured away, begun again' };
    await at.bench.get('strikeAddition', { params: { id: batch.id }, body });
    expect((await viewOf(batch.id)).asWeighed).toBeNull();
  });

  it('is told too where each weighing lies in its band and only both together are over', async () => {
    const { shea, oil, scent } = at.shop.materials;
    const range = (materialId: string, mostPercent: string) => ({
      materialId,
      leastPercent: '0',
      mostPercent,
    });
    await buildReport(at.bench, {
      reference: 'R-2',
      signedOn: '2026-11-20',
      baseFormulaId: at.shop.base,
      formulaIds: [at.shop.mixture],
      ranges: [range(shea, '80'), range(oil, '80'), range(scent, '1.025')],
    });
    const batch = await startMixture();
    const { lowGrams } = additionAt(batch, 0);
    const { highGrams } = additionAt(batch, SCENT);
    const share = (oilGrams: number, baseGrams: number) => (100 * oilGrams) / (oilGrams + baseGrams);
    // Each alone keeps 1.025 %, both together do not.
    expect(share(Number(highGrams), 99)).toBeLessThan(1.025);
    expect(share(1, Number(lowGrams))).toBeLessThan(1.025);
    expect(share(Number(highGrams), Number(lowGrams))).toBeGreaterThan(1.025);
    expect(codesOf(await weigh(batch, 0, lowGrams))).toEqual([]);
    expect(codesOf(await weigh(batch, SCENT, highGrams))).toEqual(['weighed-over-limits']);
    expect(codesOf(await weigh(batch, SCENT, '1'))).toEqual([]);
  });

  it('stays on the record of the made batch', async () => {
    const batch = await startMixture();
    await weigh(batch, SCENT, '7', { deviation, isOverKnown: true });
    await makeAll(at.bench, batch.id);
    const made = await at.bench.get('finishBatch', { params: { id: batch.id }, body: { yieldGrams: '100' } });
    expect(made.asWeighed?.code).toBe('check-weighed-over');
  });

  it('wants what and why besides the knowing', async () => {
    const batch = await startMixture();
    expect(codesOf(await weigh(batch, SCENT, '7', { isOverKnown: true }))).toEqual(['weight-outside-band']);
  });

  it('begins just above what the report allows, what is not weighed in yet counted as planned', async () => {
    const batch = await startMixture();
    // x / (99 + x) = 1.5 % at x = 1.507614 g.
    expect(codesOf(await weigh(batch, SCENT, '1.507615', { deviation, isReadingSure: true }))).toEqual([
      'weighed-over-limits',
    ]);
    expect(codesOf(await weigh(batch, SCENT, '1.507614', { deviation, isReadingSure: true }))).toEqual([]);
  });

  it('is not asked about in a trial, which is never sold, and is shown all the same', async () => {
    const batch = await startMixture('trial');
    expect(codesOf(await weigh(batch, SCENT, '7', { deviation }))).toEqual([]);
    expect((await viewOf(batch.id)).asWeighed?.code).toBe('check-weighed-over');
  });
});

describe('a weighing outside of its band', () => {
  const noteOn = async (id: string) => {
    const screen = additionAt(await viewOf(id), SCENT);
    return screen.shareNow && say(screen.shareNow);
  };

  it('says what the grams still to come are by then, and whether the report still allows that', async () => {
    const batch = await startMixture();
    expect(additionAt(batch, SCENT).shareNow).toBeNull();
    await weigh(batch, 0, '110', { deviation });
    // 1 g of 111 g.
    expect(await noteOn(batch.id)).toBe(
      'Other than planned went in before: the 1 g stay, and are 0.901 % now instead of 1 %, still within the report (0 to 1.5 %).',
    );
  });

  it('says where the report does not allow it any more', async () => {
    const batch = await startMixture();
    await weigh(batch, 0, '60', { deviation, isOverKnown: true });
    expect(await noteOn(batch.id)).toContain(
      '1.639 % now instead of 1 %, more than the report allows (0 to 1.5 %)',
    );
  });
});

describe('too little weighed in, as against the report', () => {
  /** A later report that asks for at least 0.9 % of lavender oil; it covers the same base and mixture. */
  const askForLeast = () =>
    buildReport(at.bench, {
      reference: 'R-2',
      signedOn: '2026-11-01',
      reviewBy: '2028-10-01',
      baseFormulaId: at.shop.base,
      formulaIds: [at.shop.mixture],
      ranges: [
        { materialId: at.shop.materials.shea, leastPercent: '50', mostPercent: '75' },
        { materialId: at.shop.materials.oil, leastPercent: '20', mostPercent: '45' },
        { materialId: at.shop.materials.scent, leastPercent: '0.9', mostPercent: '1.5' },
      ],
    });

  it('begins just below what the report asks for, and says how much is missing', async () => {
    await askForLeast();
    const batch = await startMixture();
    // x / (99 + x) = 0.9 % at x = 0.899091826 g.
    const refused = await weigh(batch, SCENT, '0.899091', { deviation, isReadingSure: true });
    expect(codesOf(refused)).toEqual(['weighed-over-limits']);
    const [first] = refused.ok ? [] : refused.problems;
    expect(first && sayProblem(first).says).toContain('the assessor’s report R-2 asks for at least 0.9 %');
    expect(first && sayProblem(first).mend).toContain('at least 0.9 g of Lavender oil are needed');
    expect(codesOf(await weigh(batch, SCENT, '0.899092', { deviation, isReadingSure: true }))).toEqual([]);
    expect((await viewOf(batch.id)).asWeighed).toBeNull();
  });

  it('stays on the record of the made batch', async () => {
    await askForLeast();
    const batch = await startMixture();
    await weigh(batch, SCENT, '0.5', { deviation, isOverKnown: true });
    await makeAll(at.bench, batch.id);
    const made = await at.bench.get('finishBatch', { params: { id: batch.id }, body: { yieldGrams: '99' } });
    expect(made.asWeighed?.code).toBe('check-weighed-below');
  });

  it('is never inside the band', async () => {
    const before = await startMixture();
    expect(additionAt(before, SCENT).lowGrams).toBe('0.95');
    await buildReport(at.bench, {
      reference: 'R-3',
      signedOn: '2026-11-02',
      reviewBy: '2028-10-01',
      baseFormulaId: at.shop.base,
      formulaIds: [at.shop.mixture],
      ranges: [
        { materialId: at.shop.materials.shea, leastPercent: '50', mostPercent: '75' },
        { materialId: at.shop.materials.oil, leastPercent: '20', mostPercent: '45' },
        { materialId: at.shop.materials.scent, leastPercent: '0.98', mostPercent: '1.5' },
      ],
    });
    const wish = inGrams(at.shop.mixtureRevision, '100');
    const batch = await at.bench.get('startBatch', { body: { wish } });
    expect(additionAt(batch, SCENT).lowGrams).toBe('0.98');
  });
});
