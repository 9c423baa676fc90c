import { Buffer } from 'node:buffer';
import { describe, expect, it } from 'vitest';
import { buildMixture, line, step } from '../../../test/workshop/build-formula.ts';
import { inGrams } from '../../../test/workshop/build-making.ts';
import { buildPng } from '../../../test/workshop/build-png.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openMakingBench, type Started } from '../../../test/workshop/making-bench.ts';

const at = openMakingBench();

const METHOD = [
  step('hold', 'Hold it warm', { leastCelsius: '70', mostCelsius: '75', minutes: '20' }),
  step('weigh', 'Weigh what melted'),
  step('set', 'Let it set in the fridge', { leastHours: '1', mostHours: '2.5' }),
  step('whip', 'Whip', { roundMinutes: '2', rounds: 3, growsPercent: '80' }),
];

async function start(): Promise<Started> {
  const { revisionId } = await buildMixture(at.bench, [line(at.shop.materials.shea, '100')], {
    name: 'Timed butter',
    code: 'TB',
    details: { steps: METHOD },
  });
  const wish = inGrams(revisionId, '100', { purpose: 'trial' });
  const batch = await at.bench.get('startBatch', { body: { wish } });
  await at.weigh(batch, 0, '100');
  return at.bench.get('getBatch', { params: { id: batch.id } });
}
function stepOf(batch: Started, position: number) {
  const screen = batch.screens.find((each) => each.kind === 'step' && each.position === position);
  if (screen?.kind !== 'step') throw new Error(`there is no step ${position}`);
  return screen;
}
const begin = (id: string, position: number, more: object = {}) =>
  at.bench.ask('beginStep', { params: { id }, body: { position, ...more } });
const tick = (id: string, position: number, more: object = {}) =>
  at.bench.ask('recordStep', {
    params: { id },
    body: { position, celsius: null, minutes: null, remark: '', ...more },
  });
const round = (id: string, more: object = {}) =>
  at.bench.ask('recordRound', {
    params: { id },
    body: {
      position: 3,
      load: 1,
      round: 1,
      minutes: '2',
      looked: 'loose',
      goes: 'on',
      celsius: null,
      ...more,
    },
  });
const deviation = { what: 'Taken off early', why: 'The power went' };

describe('a step that is begun', () => {
  it('stands with who began it and when, for every tablet', async () => {
    const { id } = await start();
    const begun = await begin(id, 0);
    expect(begun.ok && stepOf(begun.value, 0).begun).toMatchObject([
      { by: 'Ada Quill', at: at.bench.now(), load: 1, round: 1 },
    ]);
  });

  it('is not begun twice: the second hand is told who was first', async () => {
    const { id } = await start();
    await begin(id, 0);
    const again = await begin(id, 0);
    expect(!again.ok && again.problems[0]).toMatchObject({
      code: 'step-begun-already',
      where: 'Hold it warm',
      parameters: { by: 'Ada Quill' },
    });
  });

  it('may begin anew once its beginning is struck, which stays readable', async () => {
    const { id } = await start();
    const begun = await begin(id, 0);
    const entryId = (begun.ok && stepOf(begun.value, 0).begun[0]?.entryId) || '';
    const struck = await at.bench.get('strikeAddition', {
      params: { id },
      body: { entryId, reason: 'Wrong tap' },
    });
    expect(stepOf(struck, 0).begun).toEqual([]);
    expect(struck.struck).toMatchObject([{ what: 'Hold it warm', why: 'Wrong tap', lotNumber: null }]);
    expect((await begin(id, 0)).ok).toBe(true);
  });

  it('is not begun when it is done, in rounds it has not, or where there is no such step', async () => {
    const { id } = await start();
    expect(codesOf(await begin(id, 0, { round: 2 }))).toEqual(['step-without-rounds']);
    expect(codesOf(await begin(id, 9))).toEqual(['thing-not-found']);
    await tick(id, 0);
    expect(codesOf(await begin(id, 0))).toEqual(['step-done-already']);
  });
});

describe('a step that is done', () => {
  it('asks why it was shorter than the method wants, and keeps the answer', async () => {
    const { id } = await start();
    expect(codesOf(await tick(id, 0, { minutes: '19.9' }))).toEqual(['time-too-short']);
    const kept = await tick(id, 0, { minutes: '19.9', deviation });
    expect(kept.ok && kept.value.deviations).toMatchObject([{ step: 'Hold it warm', ...deviation }]);
  });

  it('takes the time that is wanted, and one that is longer', async () => {
    const { id } = await start();
    expect((await tick(id, 0, { minutes: '20', celsius: '75' })).ok).toBe(true);
    expect((await tick(id, 2, { minutes: '61' })).ok).toBe(true);
  });

  it('asks of what sets before its earliest hour', async () => {
    const { id } = await start();
    expect(codesOf(await tick(id, 2, { minutes: '59' }))).toEqual(['time-too-short']);
  });

  it('asks about a bowl that weighs more than went in, and about one that is half gone', async () => {
    const { id } = await start();
    const weighed = (grossGrams: string, tareGrams = '0') => ({
      weighed: { grossGrams, tareGrams, cupMl: null, unwhippedGrams: null },
    });
    expect(codesOf(await tick(id, 1, weighed('350')))).toEqual(['bowl-heavier-than-filled']);
    expect(codesOf(await tick(id, 1, weighed('9.8')))).toEqual(['bowl-half-gone']);
    const kept = await tick(id, 1, weighed('348.2', '250'));
    expect(kept.ok && kept.value.yields).toEqual([
      {
        name: 'Weigh what melted',
        kind: 'weighed',
        expectedGrams: '100',
        foundGrams: '98.2',
        lossGrams: '1.8',
        lossPercent: '1.8',
      },
    ]);
  });

  it('hands a base on once it stands, however short that was', async () => {
    const base = await at.startBase();
    const set = base.screens.at(-1);
    expect(set).toMatchObject({ stepKind: 'set', isHandedOn: true, leastHours: '12', mostHours: '24' });
    expect((await tick(base.id, 1, { minutes: '2' })).ok).toBe(true);
  });
});

describe('rounds of whipping', () => {
  const cup = { grossGrams: '100', tareGrams: '45', cupMl: '100', unwhippedGrams: '90', tinOf: '' };

  it('are begun and looked at one by one', async () => {
    const { id } = await start();
    await begin(id, 3);
    await round(id, { cups: [cup] });
    await begin(id, 3, { round: 2 });
    const kept = await round(id, { round: 2, looked: 'firm-peaks', goes: 'stop' });
    const whip = kept.ok ? stepOf(kept.value, 3) : undefined;
    expect(whip?.begun.map((each) => each.round)).toEqual([1, 2]);
    expect(whip?.whipped).toMatchObject([
      { round: 1, looked: 'loose', goes: 'on', minutes: '2', cups: [cup] },
      { round: 2, looked: 'firm-peaks', goes: 'stop', cups: [] },
    ]);
    expect(whip).toMatchObject({ roundMinutes: '2', rounds: 3, growsPercent: '80', done: null });
    expect(whip?.air).toMatchObject({ bowlGrams: '100', unwhippedGramsPerMl: '0.9', earlier: null });
  });

  it('of the same number stand once', async () => {
    const { id } = await start();
    await round(id);
    const again = await round(id);
    expect(!again.ok && again.problems[0]).toMatchObject({
      code: 'round-done-already',
      parameters: { by: 'Ada Quill', round: 1 },
    });
    expect((await round(id, { load: 2 })).ok).toBe(true);
  });

  it('refuse a cup that cannot be, and a step that is not whipped', async () => {
    const { id } = await start();
    const bad = await round(id, { cups: [cup, { ...cup, tareGrams: '100' }] });
    expect(!bad.ok && bad.problems[0]).toMatchObject({
      code: 'weighed-nothing',
      where: 'cups[1].tareGrams',
    });
    expect(codesOf(await round(id, { position: 0 }))).toEqual(['step-without-rounds']);
  });

  it('ask about a cup that weighs more than lies in the bowl, or that nothing whipped weighs', async () => {
    const { id } = await start();
    const slip = { grossGrams: '2050', tareGrams: '50', cupMl: '100', unwhippedGrams: null, tinOf: '' };
    const asked = await round(id, { cups: [cup, slip] });
    expect(!asked.ok && asked.problems.map(({ code, where }) => [code, where])).toEqual([
      ['cup-heavier-than-bowl', 'cups[1].grossGrams'],
      ['cup-density-unusual', 'cups[1].grossGrams'],
    ]);
    expect(codesOf(await round(id, { cups: [slip], sure: ['cup-heavier-than-bowl'] }))).toEqual([
      'cup-density-unusual',
    ]);
    const sure = ['cup-heavier-than-bowl', 'cup-density-unusual'];
    expect((await round(id, { cups: [slip], sure })).ok).toBe(true);
  });

  it('take no time below nought and no heat that no bench has', async () => {
    const { id } = await start();
    expect(codesOf(await round(id, { minutes: '-0.1' }))).toEqual(['minutes-negative']);
    expect(codesOf(await round(id, { celsius: '900' }))).toEqual(['heat-absurd']);
    expect(codesOf(await round(id, { celsius: '250.1' }))).toEqual(['heat-absurd']);
    expect(codesOf(await round(id, { celsius: '-40.1' }))).toEqual(['heat-absurd']);
    expect((await round(id, { minutes: '0', celsius: '-40' })).ok).toBe(true);
    expect((await round(id, { round: 2, celsius: '250' })).ok).toBe(true);
    expect(codesOf(await tick(id, 0, { minutes: '-5' }))).toEqual(['minutes-negative']);
  });

  it('end with the one that stops: what comes after it asks for a strike', async () => {
    const { id } = await start();
    await round(id, { round: 2, goes: 'stop' });
    const after = await round(id, { round: 3 });
    expect(!after.ok && after.problems[0]).toMatchObject({
      code: 'load-stopped-already',
      parameters: { by: 'Ada Quill', stopped: 2, round: 3 },
    });
    expect((await round(id, { round: 1 })).ok).toBe(true);
    expect((await round(id, { load: 2, round: 2 })).ok).toBe(true);
    expect(codesOf(await round(id, { load: 2, round: 1, goes: 'stop' }))).toEqual(['load-stopped-already']);
  });

  it('teach nothing by a cup that can only be a slip, also where it was said to be so', async () => {
    const first = await start();
    const slip = { grossGrams: '205', tareGrams: '50', cupMl: '100', unwhippedGrams: '900', tinOf: '' };
    const sure = ['cup-heavier-than-bowl', 'cup-density-unusual'];
    await round(first.id, { cups: [cup] });
    await round(first.id, { round: 2, goes: 'stop', cups: [slip], sure });
    const wish = inGrams(first.revisionId, '100', { purpose: 'trial' });
    const next = await at.bench.get('startBatch', { body: { wish } });
    expect(stepOf(next, 3).air).toMatchObject({
      earlier: { batches: 1, meanGramsPerMl: '0.55' },
      unwhippedGramsPerMl: '0.9',
    });
  });

  it('teach the next batch what it grows to', async () => {
    const first = await start();
    await round(first.id, { goes: 'stop', cups: [cup] });
    const wish = inGrams(first.revisionId, '100', { purpose: 'trial' });
    const next = await at.bench.get('startBatch', { body: { wish } });
    expect(stepOf(next, 3).air?.earlier).toEqual({
      batches: 1,
      meanGramsPerMl: '0.55',
      leastGramsPerMl: '0.55',
    });
  });
});

describe('a photograph of a step', () => {
  const take = (id: string, bytes: Uint8Array, caption = 'A smooth melt') =>
    at.bench.ask('addStepPhoto', {
      params: { id },
      body: { position: 0, caption, base64: Buffer.from(bytes).toString('base64') },
    });

  it('lies with its step, and is read again as it was taken', async () => {
    const { id } = await start();
    const png = buildPng(4, 3);
    const kept = await take(id, png);
    const [photo] = (kept.ok && stepOf(kept.value, 0).photos) || [];
    expect(photo).toMatchObject({ caption: 'A smooth melt', by: 'Ada Quill', at: at.bench.now() });
    const file = (await at.bench.get('getAttachment', { params: { id: photo?.id ?? '' } })) as {
      bytes: Uint8Array;
    };
    expect(Buffer.from(file.bytes).equals(png)).toBe(true);
    expect(kept.ok && stepOf(kept.value, 1).photos).toEqual([]);
  });

  it('goes by the words of its step where nobody said what it shows', async () => {
    const { id } = await start();
    const kept = await take(id, buildPng(4, 3), '');
    expect(kept.ok && stepOf(kept.value, 0).photos[0]?.caption).toBe('Hold it warm');
  });

  it('is refused where it is no picture, too large, or one too many', async () => {
    const { id } = await start();
    expect(codesOf(await take(id, Buffer.from('%PDF-1.7')))).toEqual(['photo-not-picture']);
    expect(codesOf(await take(id, Buffer.alloc(500_001)))).toEqual(['photo-too-large']);
    for (let taken = 0; taken < 12; taken += 1) expect((await take(id, buildPng(4, 3))).ok).toBe(true);
    expect(codesOf(await take(id, buildPng(4, 3)))).toEqual(['photos-too-many']);
  });

  it('is struck with a reason: the picture goes from the file, the record and its chain stay sound', async () => {
    const { id } = await start();
    const kept = await take(id, buildPng(4, 3));
    const [photo] = (kept.ok && stepOf(kept.value, 0).photos) || [];
    const body = { entryId: photo?.entryId ?? '', reason: 'Somebody is seen on it' };
    const struck = await at.bench.get('strikeStepPhoto', { params: { id }, body });
    expect(stepOf(struck, 0).photos).toEqual([]);
    expect(struck.struck).toMatchObject([
      { screen: stepOf(struck, 0).screen, what: 'Photograph: A smooth melt', why: 'Somebody is seen on it' },
    ]);
    const read = await at.bench.ask('getAttachment', { params: { id: photo?.id ?? '' } });
    expect(codesOf(read)).toEqual(['thing-not-found']);
    const { findings } = await at.bench.get('checkUp');
    expect(findings.filter(({ isSound }) => !isSound)).toEqual([]);
    expect(codesOf(await at.bench.ask('strikeStepPhoto', { params: { id }, body }))).toEqual([
      'entry-struck-already',
    ]);
    expect((await take(id, buildPng(4, 3))).ok).toBe(true);
  });

  it('of nobody knows which is not struck', async () => {
    const { id } = await start();
    const body = { entryId: 'nothing', reason: 'It shows nothing' };
    expect(codesOf(await at.bench.ask('strikeStepPhoto', { params: { id }, body }))).toEqual([
      'thing-not-found',
    ]);
  });
});
