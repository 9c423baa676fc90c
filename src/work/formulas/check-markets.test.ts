import { describe, expect, it } from 'vitest';
import { buildMixture, buildReport, line, revisionOf } from '../../../test/workshop/build-formula.ts';
import { buildProduct, inGrams, inTins, makeFirmBase } from '../../../test/workshop/build-making.ts';
import { buildIngredient } from '../../../test/workshop/build-stock.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openMakingBench } from '../../../test/workshop/making-bench.ts';
import { say } from '../../words/index.ts';

const at = openMakingBench();
const check = (id: string, markets?: string) =>
  at.bench.get('checkRevision', { params: { id }, query: markets === undefined ? {} : { markets } });

/** A balm of one fat of which every paper is there, and a report for Great Britain alone. */
async function buildBalm() {
  const fat = await buildIngredient(at.bench, {
    name: 'Mango butter',
    inciEu: 'Mangifera Indica Seed Butter',
  });
  const balm = await buildMixture(at.bench, [line(fat, '100')], { name: 'Plain balm', code: 'PB' });
  await buildReport(at.bench, {
    reference: 'R-GB',
    formulaIds: [balm.formulaId],
    markets: ['GB'],
    ranges: [{ materialId: fat, leastPercent: '90', mostPercent: '100' }],
  });
  return balm;
}
const sell = (formulaId: string, markets: ('GB' | 'NI' | 'EU')[], more: object = {}) =>
  buildProduct(at.bench, formulaId, at.shop.materials, { name: 'Plain balm tin', markets, ...more });

describe('the markets that a check judges by', () => {
  it('are those that its products are sold in: a report for Great Britain suffices for a tin sold there', async () => {
    const balm = await buildBalm();
    await sell(balm.formulaId, ['GB']);
    const view = await check(balm.revisionId);
    expect(view.sold).toEqual({ products: ['Plain balm tin'], markets: ['GB'] });
    expect(view.answer).toBe('yes');
    expect(say(view.sentence)).toBe('Plain balm, revision 1, may be made for sale in Great Britain.');
  });

  it('are all answered in a line each, whichever are looked at', async () => {
    const balm = await buildBalm();
    await sell(balm.formulaId, ['GB']);
    for (const asked of [undefined, 'GB', 'US', 'NI,EU']) {
      const { everywhere } = await check(balm.revisionId, asked);
      expect(everywhere).toMatchObject([
        { market: 'GB', answer: 'yes', because: null, others: 0, questions: 0 },
        { market: 'NI', answer: 'no', because: { code: 'sale-report-missing' }, others: 0 },
        { market: 'EU', answer: 'no', because: { code: 'sale-report-missing' }, others: 0 },
        { market: 'US', answer: 'no', because: { code: 'sale-report-missing' }, questions: 1 },
      ]);
    }
  });

  it('are answered one by one where another one is looked at too', async () => {
    const balm = await buildBalm();
    await sell(balm.formulaId, ['GB']);
    const view = await check(balm.revisionId, 'GB,NI');
    expect(say(view.sentence)).toBe(
      'Plain balm, revision 1, may be made for sale in Great Britain. In Northern Ireland it may not.',
    );
    expect(view.markets.map(({ market, answer, sentence }) => [market, answer, say(sentence)])).toEqual([
      ['GB', 'yes', 'May be made for sale in Great Britain.'],
      ['NI', 'no', 'May not be made for sale in Northern Ireland: no assessor’s report covers it there.'],
    ]);
  });

  it('count what is open in its own market only', async () => {
    await at.beginAnew({ isDecided: false });
    const view = await check(at.shop.mixtureRevision);
    expect(view.answer).toBe('decide');
    expect(say(view.sentence)).toContain('in Great Britain and Northern Ireland once');
    const withEu = await check(at.shop.mixtureRevision, 'GB,EU');
    expect(say(withEu.sentence)).toBe(
      'Lavender butter, revision 1, may not be made for sale in the European Union. In Great Britain it may once the open questions are decided.',
    );
  });

  it('of a base are those of what it goes into', async () => {
    expect((await check(at.shop.baseRevision)).sold).toEqual({
      products: ['Lavender butter', 'Lavender butter, small'],
      markets: ['GB', 'NI'],
    });
  });

  it('are all of them while no product says where, and what is withdrawn asks for none', async () => {
    const balm = await buildBalm();
    await sell(balm.formulaId, ['EU'], { isWithdrawn: true });
    const view = await check(balm.revisionId);
    expect(view.sold).toEqual({ products: [], markets: [] });
    expect(view.markets.map(({ market, answer }) => [market, answer])).toEqual([
      ['GB', 'yes'],
      ['NI', 'no'],
      ['EU', 'no'],
    ]);
    expect(say(view.sentence)).toBe(
      'Plain balm, revision 1, may be made for sale in Great Britain. In Northern Ireland and the European Union it may not.',
    );
  });
});

describe('check, plan and start', () => {
  it('say the same of a revision that is written down as a trial', async () => {
    const balm = await buildBalm();
    const { latest } = await at.bench.get('getFormula', { params: { id: balm.formulaId } });
    if (!latest) throw new Error('the balm has a revision');
    const details = revisionOf(latest.details.lines, { standing: 'trial' });
    await at.bench.get('saveRevision', {
      params: { id: balm.formulaId },
      body: { version: latest.version, details },
    });
    const view = await check(balm.revisionId, 'GB');
    const plan = await at.bench.get('planBatch', {
      body: inGrams(balm.revisionId, '100', { markets: ['GB'] }),
    });
    expect(view.answer).toBe('no');
    expect(view.reasons.map(({ code }) => code)).toEqual(['sale-trial']);
    expect(plan.hindrances).toContainEqual({ ...view.reasons[0], parameters: expect.anything() });
  });

  it('judge tins by where their product is sold, whatever else was asked', async () => {
    await makeFirmBase(at.bench, at.shop, '800');
    const { mixture, mixtureRevision, materials } = at.shop;
    const abroad = await buildProduct(at.bench, mixture, materials, { name: 'For abroad', markets: ['EU'] });
    const wish = inTins(mixtureRevision, [{ productId: abroad, units: 2 }], { markets: ['GB'] });
    expect((await check(mixtureRevision, 'EU')).answer).toBe('no');
    const plan = await at.bench.get('planBatch', { body: wish });
    expect(plan.hindrances.map((reason) => say(reason))).toContain(
      'No assessor’s report covers it for the European Union.',
    );
    expect(codesOf(await at.bench.ask('startBatch', { body: { wish } }))).toContain('batch-hindered');
  });
});
