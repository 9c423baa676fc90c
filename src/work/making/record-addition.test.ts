import { describe, expect, it } from 'vitest';
import { buildLot } from '../../../test/workshop/build-stock.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openMakingBench } from '../../../test/workshop/making-bench.ts';
import { sayProblem } from '../../words/index.ts';

const at = openMakingBench();
const { onHand, startBase, additionAt, weigh } = at;

describe('weighing in', () => {
  it('books what the scale said, not what was asked for', async () => {
    const batch = await startBase();
    const view = await weigh(batch, 0, '521.3');
    expect(view.ok && view.value).toMatchObject({ actualGrams: '521.3', verdict: 'inside' });
    const { screens } = await at.bench.get('getBatch', { params: { id: batch.id } });
    expect(screens[0]?.done).toEqual(view.ok && view.value);
    expect(await onHand(at.shop.lots.shea)).toBe('1478.7');
  });

  it('asks outside of the band what was done differently and why, and on its ends does not', async () => {
    const batch = await startBase();
    // 520 g and 2 % of it either way: 509.6 to 530.4 g.
    expect(codesOf(await weigh(batch, 0, '509.5'))).toEqual(['weight-outside-band']);
    expect(codesOf(await weigh(batch, 0, '530.5'))).toEqual(['weight-outside-band']);
    await weigh(batch, 0, '530.5', { deviation: { what: 'A tenth over', why: 'A lump' } });
    const { deviations } = await at.bench.get('getBatch', { params: { id: batch.id } });
    expect(deviations).toMatchObject([{ screen: 0, what: 'A tenth over', why: 'A lump' }]);
    expect((await weigh(batch, 1, '285.6')).ok).toBe(true);
  });

  it('is done once: the other tab is refused until the first entry is struck', async () => {
    const batch = await startBase();
    await weigh(batch, 0, '520');
    expect(codesOf(await weigh(batch, 0, '520'))).toEqual(['addition-done-already']);
    expect(await onHand(at.shop.lots.shea)).toBe('1480');
  });

  it('counts the same stamp once', async () => {
    const batch = await startBase();
    const stamp = at.bench.stamp();
    const first = await weigh(batch, 0, '520', { stamp });
    expect(await weigh(batch, 0, '520', { stamp })).toEqual(first);
    expect(await onHand(at.shop.lots.shea)).toBe('1480');
  });

  it('takes another released lot only with what and why, and no lot of anything else', async () => {
    const batch = await startBase();
    const other = await buildLot(at.bench, at.shop.materials.shea, { bestBefore: '2028-01-31' });
    expect(codesOf(await weigh(batch, 0, '520', { lotId: other }))).toEqual(['lot-not-planned']);
    const deviation = { what: 'Another tub', why: 'The first was at the stall' };
    expect((await weigh(batch, 0, '520', { lotId: other, deviation })).ok).toBe(true);
    expect(await onHand(other)).toBe('480');
    expect(codesOf(await weigh(batch, 1, '280', { lotId: at.shop.lots.scent, deviation }))).toEqual([
      'lot-of-another-item',
    ]);
  });

  it('takes nothing that is expired, blocked or not there, whatever is said about it', async () => {
    const batch = await startBase();
    const deviation = { what: 'Another tub', why: 'In a hurry' };
    const old = await buildLot(at.bench, at.shop.materials.shea, { bestBefore: '2026-11-26' });
    at.bench.setClock('2026-11-27T08:05:00Z');
    expect(codesOf(await weigh(batch, 0, '520', { lotId: old, deviation }))).toEqual(['lot-expired']);
    await at.bench.get('setLotStatus', {
      params: { id: at.shop.lots.shea },
      body: { status: 'blocked', reason: 'Hair' },
    });
    expect(codesOf(await weigh(batch, 0, '520'))).toEqual(['lot-not-released-for-use']);
    expect(codesOf(await weigh(batch, 0, '520', { lotId: 'none', deviation }))).toEqual(['thing-not-found']);
  });

  it('says what a lot has where more is asked of it, and that the tub is to be weighed', async () => {
    const batch = await startBase('2800');
    await at.bench.get('moveLot', {
      params: { id: at.shop.lots.oil },
      body: { kind: 'binned', quantity: '900', reason: 'Spilt' },
    });
    const refusal = await weigh(batch, 1, '980');
    if (refusal.ok || !refusal.problems[0]) throw new Error('it holds 100 g only');
    expect(refusal.problems[0]).toMatchObject({ code: 'lot-too-small', found: '980', allowed: '100' });
    expect(sayProblem(refusal.problems[0]).mend).toContain('Weigh the tub');
    expect(await onHand(at.shop.lots.oil)).toBe('100');
  });

  it('strikes a wrong entry: it stays readable, and its amount goes back to the lot', async () => {
    const batch = await startBase();
    const wrong = await weigh(batch, 0, '530');
    const entryId = wrong.ok ? wrong.value.entryId : '';
    const params = { id: batch.id };
    const struck = await at.bench.get('strikeAddition', { params, body: { entryId, reason: 'Wrong tub' } });
    expect(additionAt(struck, 0).done).toBeNull();
    expect(await onHand(at.shop.lots.shea)).toBe('2000');
    const { movements } = await at.bench.get('getLot', { params: { id: at.shop.lots.shea } });
    expect(movements.map((row) => [row.kind, row.change, row.reason])).toEqual(
      expect.arrayContaining([
        ['used', '-530', ''],
        ['returned', '530', 'Wrong tub'],
      ]),
    );
    expect(
      codesOf(await at.bench.ask('strikeAddition', { params, body: { entryId, reason: 'Twice' } })),
    ).toEqual(['entry-struck-already']);
    expect((await weigh(batch, 0, '520')).ok).toBe(true);
  });

  it('asks what was done differently where a temperature is not what the step wants, and the record says so', async () => {
    const batch = await startBase();
    const screen = batch.screens.find((one) => one.kind === 'step');
    if (screen?.kind !== 'step' || screen.mostCelsius === null)
      throw new Error('the base is melted within a range');
    const { position, mostCelsius } = screen;
    const note = (celsius: string, more: object = {}) =>
      at.bench.ask('recordStep', {
        params: { id: batch.id },
        body: { position, celsius, minutes: null, remark: '', ...more },
      });
    expect(codesOf(await note(String(Number(mostCelsius) + 0.1)))).toEqual(['heat-not-wanted']);
    const deviation = { what: 'Too hot', why: 'The hob was left on' };
    const noted = await note('95', { deviation });
    expect(noted.ok && noted.value.deviations).toMatchObject([{ screen: screen.screen, ...deviation }]);
    const entryId = noted.ok ? (noted.value.screens[screen.screen]?.done?.entryId ?? '') : '';
    await at.bench.get('strikeAddition', { params: { id: batch.id }, body: { entryId, reason: 'Misread' } });
    expect(codesOf(await note(mostCelsius))).toEqual([]);
  });

  it('writes steps down once, strikes them too, and takes late deviations', async () => {
    const batch = await startBase();
    const params = { id: batch.id };
    const body = { position: 0, celsius: '72', minutes: '20', remark: 'Clear' };
    const view = await at.bench.get('recordStep', { params, body });
    expect(view.screens[1]?.done).toMatchObject({ celsius: '72', minutes: '20', remark: 'Clear' });
    expect(codesOf(await at.bench.ask('recordStep', { params, body }))).toEqual(['step-done-already']);
    const entryId = view.screens[1]?.done?.entryId ?? '';
    await at.bench.get('strikeAddition', { params, body: { entryId, reason: 'Read the wrong probe' } });
    const again = await at.bench.get('recordStep', { params, body: { ...body, celsius: '70' } });
    expect(again.screens[1]?.done).toMatchObject({ celsius: '70' });
    expect(codesOf(await at.bench.ask('recordStep', { params, body: { ...body, position: 9 } }))).toEqual([
      'thing-not-found',
    ]);
    const late = { screen: 3, what: 'No lid', why: 'It did not fit' };
    expect((await at.bench.get('recordDeviation', { params, body: late })).deviations).toMatchObject([late]);
    expect(codesOf(await at.bench.ask('recordDeviation', { params, body: { ...late, screen: 4 } }))).toEqual([
      'screen-unknown',
    ]);
  });
});
