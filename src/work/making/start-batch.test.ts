import { describe, expect, it } from 'vitest';
import { inGrams, makeBatch, makeFirmBase, reviseBase } from '../../../test/workshop/build-making.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openMakingBench } from '../../../test/workshop/making-bench.ts';
import { sayProblem } from '../../words/index.ts';

const at = openMakingBench();
const { onHand, startBase } = at;

describe('the start of a batch', () => {
  it('numbers batches by the letters of their formula, and takes nothing from the lots', async () => {
    const first = await startBase();
    const second = await startBase('100');
    expect([first.number, second.number]).toEqual(['QB-0001', 'QB-0002']);
    expect(first).toMatchObject({
      state: 'making',
      plannedGrams: '800',
      by: 'Ada Quill',
      markets: ['GB', 'NI'],
    });
    expect(first.screens.map((one) => (one.kind === 'step' ? one.what : one.itemName))).toEqual([
      'Shea butter',
      'Melt in a water bath',
      'Sunflower oil',
      'Cover and let it set',
    ]);
    expect(await onHand(at.shop.lots.shea)).toBe('2000');
  });

  it('counts the same stamp once', async () => {
    const body = { stamp: at.bench.stamp(), wish: inGrams(at.shop.baseRevision, '800') };
    const first = await at.bench.get('startBatch', { body });
    expect(await at.bench.get('startBatch', { body })).toEqual(first);
    expect(await at.bench.get('listBatches')).toHaveLength(1);
  });

  it('refuses what is short, and names the item and how to mend it', async () => {
    const refusal = await at.bench.ask('startBatch', {
      body: { wish: inGrams(at.shop.baseRevision, '3000') },
    });
    expect(codesOf(refusal)).toEqual(['item-short', 'batch-hindered']);
    if (refusal.ok) return;
    expect(refusal.problems[0] && sayProblem(refusal.problems[0]).says).toBe(
      'There is too little of Sunflower oil: 1\u00a0000 g of 1\u00a0050 g; 50 g missing.',
    );
    expect(await at.bench.get('listBatches')).toEqual([]);
  });

  it('refuses for sale what lies outside the report, and lets it be tried', async () => {
    await makeFirmBase(at.bench, at.shop, '800');
    const strong = await reviseMixture({ scentGrams: '20' });
    const refusal = await at.bench.ask('startBatch', { body: { wish: inGrams(strong, '100') } });
    expect(codesOf(refusal)).toContain('batch-hindered');
    const trial = await at.bench.get('startBatch', {
      body: { wish: inGrams(strong, '100', { purpose: 'trial' }) },
    });
    expect(trial.purpose).toBe('trial');
  });

  it('refuses for sale under a report past its review day, says what helps, and lets it be tried', async () => {
    await makeFirmBase(at.bench, at.shop, '800');
    const [report] = await at.bench.get('listReports');
    const reviewBy = async (day: string) => {
      const details = { ...report?.details, reviewBy: day } as NonNullable<typeof report>['details'];
      const version = (await at.bench.get('listReports'))[0]?.version ?? 0;
      await at.bench.get('saveReport', { body: { id: report?.id ?? '', version, details } });
    };
    await reviewBy('2026-11-25');
    const wish = inGrams(at.shop.mixtureRevision, '100');
    const refusal = await at.bench.ask('startBatch', { body: { wish } });
    expect(codesOf(refusal)).toEqual(['batch-hindered']);
    expect(refusal.ok ? '' : refusal.problems.map((one) => sayProblem(one).says)[0]).toContain(
      'by 25 November 2026',
    );
    const trial = inGrams(at.shop.mixtureRevision, '100', { purpose: 'trial' });
    expect((await at.bench.get('startBatch', { body: { wish: trial } })).purpose).toBe('trial');
    await reviewBy('2026-11-26');
    expect((await at.bench.get('startBatch', { body: { wish } })).purpose).toBe('sale');
  });

  it('refuses for sale a revision that is marked as a trial', async () => {
    await makeFirmBase(at.bench, at.shop, '800');
    const tried = await reviseMixture({ standing: 'trial' });
    const refusal = await at.bench.ask('startBatch', { body: { wish: inGrams(tried, '100') } });
    const said = refusal.ok ? [] : refusal.problems.map((one) => sayProblem(one).says);
    expect(said.some((one) => /trial/i.test(one))).toBe(true);
  });

  it('refuses for sale an unknown that nobody decided, or that somebody refused', async () => {
    await at.beginAnew({ isDecided: false });
    await makeFirmBase(at.bench, at.shop, '800');
    const start = async () =>
      codesOf(await at.bench.ask('startBatch', { body: { wish: inGrams(at.shop.mixtureRevision, '100') } }));
    expect(await start()).toEqual(['batch-hindered']);
    const params = { id: at.shop.mixtureRevision };
    const { open } = await at.bench.get('checkRevision', { params, query: {} });
    expect(open).toHaveLength(1);
    const body = { key: open[0]?.key ?? '', verdict: 'refused' as const, reason: 'Not at this share.' };
    await at.bench.get('decideUnknown', { params, body });
    expect(await start()).toEqual(['batch-hindered']);
  });

  it('keeps a base that is not firm, or of a trial, out of what is sold', async () => {
    await makeBatch(at.bench, inGrams(at.shop.baseRevision, '800'));
    const wish = inGrams(at.shop.mixtureRevision, '100');
    expect(codesOf(await at.bench.ask('startBatch', { body: { wish } }))).toContain('item-short');
    const tried = await makeBatch(at.bench, inGrams(at.shop.baseRevision, '400', { purpose: 'trial' }));
    await at.bench.get('sayFirm', { params: { id: tried.lotId ?? '' }, body: { remark: 'Firm.' } });
    expect(codesOf(await at.bench.ask('startBatch', { body: { wish } }))).toContain('item-short');
    const trial = inGrams(at.shop.mixtureRevision, '100', { purpose: 'trial' });
    expect((await at.bench.get('startBatch', { body: { wish: trial } })).purpose).toBe('trial');
  });

  it('does not use a base that was made by another composition than the one in force', async () => {
    await makeFirmBase(at.bench, at.shop, '800');
    const wish = inGrams(at.shop.mixtureRevision, '100');
    await reviseBase(at.bench, at.shop, ['65', '35']);
    expect((await at.bench.ask('startBatch', { body: { wish } })).ok).toBe(true);
    await reviseBase(at.bench, at.shop, ['66', '34']);
    expect(codesOf(await at.bench.ask('startBatch', { body: { wish } }))).toContain('item-short');
  });
});

/** The mixture's next revision. */
async function reviseMixture({ scentGrams = '10', standing = 'for-sale' as 'for-sale' | 'trial' }) {
  const { latest } = await at.bench.get('getFormula', { params: { id: at.shop.mixture } });
  if (!latest) throw new Error('the mixture has a revision');
  const lines = latest.details.lines.map((line) =>
    line.itemId === at.shop.materials.scent ? { ...line, grams: scentGrams } : line,
  );
  const body = { version: latest.version, details: { ...latest.details, lines, standing } };
  return (await at.bench.get('saveRevision', { params: { id: at.shop.mixture }, body })).id;
}
