import { describe, expect, it } from 'vitest';
import { buildMixture, buildReport, line, revisionOf } from '../../../test/workshop/build-formula.ts';
import { constituent, openCheckBench, ranges } from '../../../test/workshop/check-bench.ts';
import { must } from '../../core/problem.ts';
import { say } from '../../words/index.ts';
import { checkForSale } from './index.ts';

const hands = openCheckBench();
const { buildOil, check } = hands;

describe('whether a batch may be made for sale', () => {
  const ask = async (id: string) => must(await checkForSale(hands.bench.context, id, ['GB', 'NI']));

  it('lists everything that stops it, each in words', async () => {
    const oil = await buildOil([constituent('Citral', '5392-40-5', '20')]);
    const { revisionId } = await buildMixture(hands.bench, [line(hands.fat, '99'), line(oil, '1')]);
    const { answer, hindrances } = await ask(revisionId);
    expect(answer).toBe('no');
    expect(hindrances.map((one) => one.code)).toEqual(['sale-over', 'sale-report-missing']);
    const said = hindrances.map((one) => say(one));
    expect(said[0]).toContain('Citral may reach 0.2 %, above its limit of 0.15 %');
    for (const sentence of said) expect(sentence).not.toContain('no words yet');
  });

  it('shows an amount with six places, and with more where six would hide that it is over', async () => {
    const oil = await buildOil([constituent('Citral', '5392-40-5', '15.000001')]);
    const { revisionId } = await buildMixture(hands.bench, [line(hands.fat, '990'), line(oil, '10')]);
    // 1 % of 15.000001 % is 0.15000001 %: six places would show the limit itself.
    expect((await ask(revisionId)).hindrances[0]?.parameters).toMatchObject({
      percent: '0.15000001',
      limitPercent: '0.15',
    });
    const third = await buildMixture(hands.bench, [line(hands.fat, '2'), line(oil, '1')]);
    // 15.000001 % of a third is 5.000000333... %.
    expect((await ask(third.revisionId)).hindrances[0]?.parameters).toMatchObject({ percent: '5' });
  });

  it('is never yes for a trial', async () => {
    const { formulaId, revisionId } = await buildMixture(hands.bench, [line(hands.fat, '1')], {
      details: { standing: 'trial' },
    });
    await buildReport(hands.bench, { formulaIds: [formulaId], ranges: [ranges(hands.fat, '0', '100')] });
    expect((await check(revisionId)).answer).toBe('no');
    expect(await ask(revisionId)).toMatchObject({ answer: 'no', hindrances: [{ code: 'sale-trial' }] });
  });

  it('says how much room the tightest rule leaves to each material', async () => {
    const oil = await buildOil([constituent('Citral', '5392-40-5', '10')]);
    const { formulaId, revisionId } = await buildMixture(hands.bench, [
      line(hands.fat, '99'),
      line(oil, '1'),
    ]);
    await buildReport(hands.bench, {
      formulaIds: [formulaId],
      ranges: [ranges(hands.fat, '0', '99'), ranges(oil, '0', '1.2')],
    });
    const { headroom } = await ask(revisionId);
    // Citral: 0.15 of 0.10 % is 1.5 times; the report: 1.2 of 1 % is 1.2 times, which is tighter.
    expect(headroom.get(oil)?.toString()).toBe('1.2');
    expect(headroom.get(hands.fat)?.toString()).toBe('1');
  });

  it('is asked of the draft as it stands now', async () => {
    const { formulaId, revisionId } = await buildMixture(hands.bench, [line(hands.fat, '1')]);
    await buildReport(hands.bench, { formulaIds: [formulaId], ranges: [ranges(hands.fat, '0', '100')] });
    expect((await ask(revisionId)).answer).toBe('yes');
    const oil = await buildOil([constituent('Citral', '5392-40-5', '20')]);
    await hands.bench.get('saveRevision', {
      params: { id: formulaId },
      body: { version: 1, details: revisionOf([line(hands.fat, '99'), line(oil, '1')]) },
    });
    expect((await ask(revisionId)).answer).toBe('no');
  });
});
