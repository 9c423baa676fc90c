import { describe, expect, it } from 'vitest';
import { buildReport } from '../../../test/workshop/build-formula.ts';
import { acceptUnknowns } from '../../../test/workshop/build-making.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { FIVE, openFillingBench } from '../../../test/workshop/filling-bench.ts';
import { say } from '../../words/index.ts';

const at = openFillingBench();
const { makeBowl, startRun, fillAll, closeRun, brewWith, release, getLot } = at;

describe('the release', () => {
  it('is held below what the report asks for as well, the least itself allowed', async () => {
    await buildReport(at.bench, {
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
    // x / (99 + x) = 0.9 % at x = 0.899091826 g.
    const below = await brewWith('0.899091');
    expect(failing(below)).toEqual(['weighed']);
    const [held] = below.checks.filter((one) => !one.isPassed);
    expect(held && say(held.detail)).toContain('R-2 asks for at least 0.9 %');
    expect(failing(await brewWith('0.899092'))).toEqual([]);
  });

  it('says in its first sentence that the tins may not be released, and not that every limit is kept', async () => {
    const over = await brewWith('7');
    expect(failing(over)).toEqual(['weighed']);
    expect(say(over.sentence)).toBe(
      '1 tin may not be released: more was weighed in than the limits or the report allow.',
    );
    expect(over.checks.map(({ detail }) => say(detail)).join(' ')).not.toContain('every limit is kept');
    expect(say((await closedRun()).run.sentence)).toBe('5 tins wait for release.');
  });

  async function closedRun(purpose: 'sale' | 'trial' = 'sale') {
    const batch = await makeBowl(5, purpose);
    const run = await startRun(batch.id);
    await fillAll(run.id, ...FIVE);
    return { batch, run: await closeRun(run.id) };
  }
  const failing = (run: { checks: readonly { check: string; isPassed: boolean }[] }) =>
    run.checks.filter((one) => !one.isPassed).map((one) => one.check);

  it('is a named person’s, after every check is passed, and lets the tins be sold', async () => {
    const { run } = await closedRun();
    expect(failing(run)).toEqual([]);
    expect(run.checks.map((one) => one.check)).toEqual([
      'purpose',
      'weights',
      'tares',
      'limits',
      'report',
      'weighed',
      'worst',
      'lots',
      'label-GB',
      'label-NI',
      'area',
      'containers',
      'sample',
      'steps',
      'deviations',
    ]);
    const stamp = at.bench.stamp({ by: at.bench.people.second });
    const released = await at.bench.get('releaseRun', {
      params: { id: run.id },
      body: { stamp, verdict: 'released', reason: '' },
    });
    expect(released).toMatchObject({ state: 'released', release: { verdict: 'released', by: 'Bo Marsh' } });
    expect(released.checks).toEqual(run.checks);
    expect((await getLot(run.lotId)).lot.status).toBe('released');
  });

  it('counts the lots behind the tins as a trace does, and shows of which nobody knows how long they keep', async () => {
    const { run } = await closedRun();
    const { madeOf } = await at.bench.get('traceLot', { params: { id: run.lotId ?? '' } });
    const lotsCheck = (of: typeof run) => of.checks.find((one) => one.check === 'lots');
    expect(lotsCheck(run)?.isToSee).toBeFalsy();
    expect(lotsCheck(run)?.detail.parameters).toMatchObject({ count: madeOf.length, undated: 0 });
    const { id, version, paid, number } = (await getLot(at.shop.lots.oil)).lot;
    const body = { version, supplierLot: null, bestBefore: null, paid, reason: 'No date on the paper' };
    await at.bench.get('correctLot', { params: { id }, body });
    const seen = lotsCheck(await at.bench.get('getRun', { params: { id: run.id } }));
    expect(seen).toMatchObject({ isPassed: true, isToSee: true });
    expect(seen?.detail.parameters).toMatchObject({ undated: 1, which: expect.stringContaining(number) });
  });

  it('takes the words of the label from the product as of today: what was forgotten can still be said', async () => {
    const product = (await at.bench.get('listProducts')).find(({ id }) => id === at.shop.product);
    if (!product) throw new Error('the bench has a product');
    const say = async (functionText: string, version: number) =>
      at.bench.get('saveProduct', {
        body: { id: at.shop.product, version, details: { ...product.details, functionText } },
      });
    await say('', product.version);
    const { run } = await closedRun();
    expect(failing(run)).toEqual(['label-GB', 'label-NI']);
    await say('Body butter', product.version + 1);
    expect(failing(await at.bench.get('getRun', { params: { id: run.id } }))).toEqual([]);
  });

  it('is decided once', async () => {
    const { run } = await closedRun();
    expect(codesOf(await release(run.id))).toEqual([]);
    expect(codesOf(await release(run.id))).toEqual(['run-decided-already']);
    expect(codesOf(await release(run.id, 'rejected', 'Changed my mind'))).toEqual(['run-decided-already']);
  });

  it('rejects only with a reason, and the tins are not for sale', async () => {
    const { run } = await closedRun();
    expect(codesOf(await release(run.id, 'rejected'))).toEqual(['reject-reason-missing']);
    expect(codesOf(await release(run.id, 'rejected', 'Grainy'))).toEqual([]);
    expect((await getLot(run.lotId)).lot).toMatchObject({ status: 'rejected', statusReason: 'Grainy' });
  });

  it('never lets a trial be sold', async () => {
    const { run } = await closedRun('trial');
    expect(failing(run)).toEqual(['purpose']);
    const refusal = await release(run.id);
    expect(codesOf(refusal)).toEqual(['release-check-failed']);
    expect((await getLot(run.lotId)).lot.status).toBe('quarantine');
    const past = await at.bench.ask('setLotStatus', {
      params: { id: run.lotId ?? '' },
      body: { status: 'released', reason: 'Looks good' },
    });
    expect(past.ok).toBe(false);
  });

  it('is stopped by a lot that was blocked since, through the base too', async () => {
    const { run } = await closedRun();
    await at.bench.get('setLotStatus', {
      params: { id: at.shop.lots.shea },
      body: { status: 'blocked', reason: 'Recalled by the supplier' },
    });
    expect(failing(await at.bench.get('getRun', { params: { id: run.id } }))).toEqual(['lots']);
    const refusal = await release(run.id);
    expect(refusal.ok || refusal.problems[0]?.parameters?.reason).toContain('Recalled by the supplier');
  });

  it('is stopped by too much of an oil, however well that was explained', async () => {
    // The report allows 1.5 % of it: x / (99 + x) = 1.5 % at x = 1.507614 g.
    expect(failing(await brewWith('1.5'))).toEqual([]);
    const over = await brewWith('1.51');
    expect(failing(over)).toEqual(['weighed']);
    const [said] = over.checks.filter((one) => !one.isPassed).map((one) => say(one.detail));
    expect(said).toBe(
      'Weighed in was more than the limits or the report allow. Lavender oil is 1.502 %; the assessor’s report R-1 allows at most 1.5 % (Great Britain and Northern Ireland).',
    );
    expect(codesOf(await release(over.id))).toEqual(['release-check-failed']);
  });

  it('is stopped where only the weighing brought an allergen over the threshold from which it is named', async () => {
    const params = { id: at.shop.materials.scent };
    const { version, details } = await at.bench.get('getMaterial', { params });
    // 1 % of an oil with 0.1 % of it: 0.001 %, which is not yet named on what stays on the skin (Regulation (EC)
    // No 1223/2009, Annex III, entry 78).
    const geraniol = {
      name: 'Geraniol',
      cas: '106-24-1',
      leastPercent: '0',
      typicalPercent: '0.05',
      mostPercent: '0.1',
      source: 'invented for the test',
      confidence: 'supplier' as const,
    };
    const constituents = [...details.constituents, geraniol];
    await at.bench.get('saveMaterial', {
      body: { ...params, version, details: { ...details, constituents } },
    });
    await acceptUnknowns(at.bench, at.shop.mixtureRevision);
    expect(failing(await brewWith('1'))).toEqual([]);
    const over = await brewWith('1.01');
    expect(failing(over)).toEqual(['weighed']);
    const [said] = over.checks.filter((one) => !one.isPassed).map((one) => say(one.detail));
    expect(said).toContain(
      'the label has to name Geraniol (Great Britain and Northern Ireland), and it does not',
    );
    expect(codesOf(await release(over.id))).toEqual(['release-check-failed']);
  });

  it('is stopped by a report that ran out since', async () => {
    const { run } = await closedRun();
    at.bench.setClock('2028-10-01T08:00:00Z');
    expect(failing(await at.bench.get('getRun', { params: { id: run.id } }))).toEqual([]);
    at.bench.setClock('2028-10-02T08:00:00Z');
    expect(failing(await at.bench.get('getRun', { params: { id: run.id } }))).toEqual(['report']);
    expect(codesOf(await release(run.id))).toEqual(['release-check-failed']);
  });

  it('is stopped by a label that lacks something in one of its markets', async () => {
    const { run } = await closedRun();
    const { version, details } = await at.bench.get('getWorkshop');
    if (!details) throw new Error('the workshop has begun');
    const responsibleEu = { name: '', address: '' };
    await at.bench.get('changeWorkshop', { body: { version, details: { ...details, responsibleEu } } });
    expect(failing(await at.bench.get('getRun', { params: { id: run.id } }))).toEqual(['label-NI']);
  });

  it('shows what was done differently and which steps have no record', async () => {
    const { batch, run } = await closedRun();
    const body = { screen: null, what: 'Whipped twice', why: 'It fell' };
    await at.bench.get('recordDeviation', { params: { id: batch.id }, body });
    const view = await at.bench.get('getRun', { params: { id: run.id } });
    const said = view.checks.filter((one) => one.check === 'deviations').map((one) => say(one.detail));
    expect(said).toEqual(['1 thing was done differently: Whipped twice.']);
    const toSee = view.checks.filter((one) => one.isToSee).map((one) => one.check);
    expect(toSee, 'not a pass like any other').toEqual(['tares', 'containers', 'deviations']);
    const before = run.checks.filter((one) => one.isToSee);
    expect(
      before.map((one) => one.check),
      'nothing was done differently yet',
    ).toEqual(['tares', 'containers']);
    expect(codesOf(await release(run.id))).toEqual([]);
  });

  it('waits until the run is closed', async () => {
    const run = await startRun((await makeBowl()).id);
    expect(codesOf(await release(run.id))).toEqual(['run-still-filling']);
  });
});
