import { describe, expect, it } from 'vitest';
import { inGrams, makeBatch } from '../../../test/workshop/build-making.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openMakingBench, type Started } from '../../../test/workshop/making-bench.ts';

const at = openMakingBench();

/** A request as a tablet keeps it, with the stamp of its moment. */
const keptAddition = (batch: Started, position: number, actualGrams: string, more: object = {}) => {
  const { lotId, scaleId } = at.additionAt(batch, position);
  const stamp = { ...at.bench.stamp({ by: at.bench.people.second, device: 'tablet' }), ...more };
  return {
    id: stamp.id,
    route: 'recordAddition',
    params: { id: batch.id },
    body: { stamp, position, lotId: lotId ?? '', scaleId, actualGrams, isPart: false, isOverKnown: false },
    at: stamp.at,
  };
};
const refusal = (code: string) => [{ code, where: 'position', found: '520' }];
const keep = (entry: ReturnType<typeof keptAddition>, code = 'addition-done-already') =>
  at.bench.get('keepClaim', {
    body: { stamp: at.bench.stamp({ by: at.bench.people.second }), entry, problems: refusal(code) },
  });
interface Said {
  readonly how: 'enter' | 'aside';
  readonly reason: string;
  readonly strikes?: string | null | undefined;
  readonly at?: string | null | undefined;
}
const answer = (id: string, body: Said) => at.bench.ask('answerClaim', { params: { id }, body });
const reread = (batch: Started) => at.bench.get('getBatch', { params: { id: batch.id } });
const onHandOf = (batch: Started, position: number) => at.onHand(at.additionAt(batch, position).lotId ?? '');

/** Two people weighed the same in while one tablet was away. */
async function weighedTwice() {
  const batch = await at.startBase();
  await at.weigh(batch, 0, '520');
  const claim = await keep(keptAddition(batch, 0, '519'));
  return { batch, claim };
}

describe('what a tablet did while it was away and was refused when it came', () => {
  it('stands on record whole, with who, when and why, and asks at the bench', async () => {
    const { batch, claim } = await weighedTwice();
    expect(claim).toMatchObject({
      subjectKind: 'batch',
      subjectId: batch.id,
      subjectNumber: batch.number,
      what: { code: 'claim-addition', parameters: { grams: '519', item: 'Shea butter' } },
      by: 'Bo Marsh',
      device: 'test bench',
      problems: [{ code: 'addition-done-already' }],
      answer: null,
    });
    expect(claim.mayEnter?.instead).toMatchObject({
      what: { parameters: { grams: '520' } },
      by: 'Ada Quill',
    });
    expect((await reread(batch)).claims).toEqual([claim]);
    expect(await at.bench.get('listClaims')).toEqual([claim]);
  });

  it('counts once, however often the tablet sends it', async () => {
    const batch = await at.startBase();
    await at.weigh(batch, 0, '520');
    const entry = keptAddition(batch, 0, '519');
    const [one, other] = [await keep(entry), await keep(entry)];
    expect(other).toEqual(one);
    expect(await at.bench.get('listClaims')).toHaveLength(1);
  });

  it('is kept once where two tabs bring it at once', async () => {
    const batch = await at.startBase();
    await at.weigh(batch, 0, '520');
    const entry = keptAddition(batch, 0, '519');
    const [one, other] = await Promise.all([keep(entry), keep(entry)]);
    expect(other).toEqual(one);
    expect(await at.bench.get('listClaims')).toHaveLength(1);
  });

  it('stops the finishing of its batch until somebody answers', async () => {
    const { batch, claim } = await weighedTwice();
    await at.weigh(batch, 1, '280');
    const finish = () =>
      at.bench.ask('finishBatch', { params: { id: batch.id }, body: { yieldGrams: '790' } });
    expect(await finish()).toMatchObject({ ok: false, problems: [{ code: 'claims-open', found: 1 }] });
    await answer(claim.id, { how: 'aside', reason: 'The same tub, entered by both of us.' });
    expect(await finish()).toMatchObject({ ok: true });
  });

  it('asks in the morning, at the head of what is to be made', async () => {
    const { claim } = await weighedTwice();
    const { makeNext, sentence } = await at.bench.get('getMorning');
    expect(sentence).toEqual({ code: 'morning-claims-open', parameters: { open: 1 } });
    expect(makeNext[0]).toMatchObject({ state: 'stop', action: { to: '/making/away' } });
    await answer(claim.id, { how: 'aside', reason: 'The same.' });
    const after = await at.bench.get('getMorning');
    expect(after.makeNext.filter(({ key }) => key.startsWith('claims'))).toEqual([]);
  });

  it('set aside moves nothing, and stays readable with the reason', async () => {
    const { batch, claim } = await weighedTwice();
    const before = await onHandOf(batch, 0);
    const answered = await at.bench.get('answerClaim', {
      params: { id: claim.id },
      body: { how: 'aside', reason: 'The same tub.' },
    });
    expect(answered.answer).toMatchObject({ how: 'aside', reason: 'The same tub.', by: 'Ada Quill' });
    expect(await onHandOf(batch, 0)).toBe(before);
    expect((await reread(batch)).claims).toEqual([answered]);
    expect(await at.bench.get('listClaims')).toEqual([]);
  });

  it('entered as well, both are in: with its own name and time, the lot pays for both', async () => {
    const { batch, claim } = await weighedTwice();
    const before = Number(await onHandOf(batch, 0));
    const done = await answer(claim.id, { how: 'enter', reason: 'Both tubs went in.' });
    expect(done).toMatchObject({ ok: true, value: { answer: { how: 'entered' } } });
    const after = await reread(batch);
    const screen = at.additionAt(after, 0);
    expect(screen.entries.map(({ actualGrams, by }) => [actualGrams, by])).toEqual([
      ['520', 'Ada Quill'],
      ['519', 'Bo Marsh'],
    ]);
    expect(screen.entries[1]?.entryId).toBe(claim.keptId);
    expect(screen.entries[1]?.at).toBe(claim.at);
    expect(Number(await onHandOf(batch, 0))).toBe(before - 519);
    expect(after.deviations).toContainEqual(expect.objectContaining({ why: 'Both tubs went in.' }));
  });

  it('brought in by somebody else, it is entered in the name of who answers, from the device that brought it', async () => {
    const batch = await at.startBase();
    const entry = keptAddition(batch, 0, '520');
    const stamp = at.bench.stamp({ device: 'the phone' });
    const claim = await at.bench.get('keepClaim', {
      body: { stamp, entry, problems: refusal('person-locked') },
    });
    expect(claim.by).toBe('Bo Marsh');
    expect(await answer(claim.id, { how: 'enter', reason: 'Bo told me.' })).toMatchObject({ ok: true });
    expect(at.additionAt(await reread(batch), 0).entries).toMatchObject([
      { actualGrams: '520', by: 'Ada Quill' },
    ]);
    const written = await at.bench.get('exportJson');
    const entries = (written.tables as Record<string, { id: string; device: string }[]>).entry ?? [];
    expect(entries.find(({ id }) => id === entry.id)?.device).toBe('the phone');
  });

  it('of somebody who left since, it is entered in the name of who answers', async () => {
    const { batch, claim } = await weighedTwice();
    const { people } = await at.bench.get('getWorkshop');
    const bo = people.find(({ id }) => id === at.bench.people.second);
    if (!bo) throw new Error('Bo works here');
    const body = { id: bo.id, version: bo.version, name: bo.name, isActive: false };
    await at.bench.get('savePerson', { body });
    expect(codesOf(await answer(claim.id, { how: 'enter', reason: 'Bo weighed it.' }))).toEqual([]);
    expect(at.additionAt(await reread(batch), 0).entries.at(-1)?.by).toBe('Ada Quill');
  });

  it('asks what the bench would have asked, and takes the yes of whoever answers', async () => {
    const batch = await at.startBase();
    await at.weigh(batch, 0, '520');
    const claim = await keep(keptAddition(batch, 0, '5.2'));
    const enter = (sure: string[]) =>
      at.bench.ask('answerClaim', {
        params: { id: claim.id },
        body: { how: 'enter', reason: 'A little more was needed.', sure },
      });
    expect(await enter([])).toMatchObject({ ok: false, problems: [{ code: 'reading-doubtful' }] });
    expect(await enter(['reading-doubtful'])).toMatchObject({ ok: true });
  });

  it('does not go in when the tablet, which heard nothing of its question, sends it again', async () => {
    const batch = await at.startBase();
    await at.weigh(batch, 0, '520');
    const { params, body, ...entry } = keptAddition(batch, 0, '519');
    const claim = await keep({ params, body, ...entry });
    const { entryId = '' } = at.additionAt(await reread(batch), 0).done ?? {};
    await at.bench.get('strikeAddition', {
      params: { id: batch.id },
      body: { entryId, reason: 'Spilt before it went in.' },
    });
    const again = () => at.bench.ask('recordAddition', { params, body });
    expect(codesOf(await again())).toEqual(['kept-as-question']);
    await answer(claim.id, { how: 'aside', reason: 'The same tub.' });
    const before = await onHandOf(batch, 0);
    expect(codesOf(await again())).toEqual(['kept-as-question']);
    expect(at.additionAt(await reread(batch), 0).entries).toEqual([]);
    expect(await onHandOf(batch, 0)).toBe(before);
  });

  it('that was entered by its answer is not entered again', async () => {
    const { batch, claim } = await weighedTwice();
    await answer(claim.id, { how: 'enter', reason: 'Both tubs went in.' });
    const { lotId, scaleId } = at.additionAt(batch, 0);
    const stamp = { ...at.bench.stamp(), id: claim.keptId };
    const body = { stamp, position: 0, lotId: lotId ?? '', scaleId, actualGrams: '519' };
    const again = await at.bench.ask('recordAddition', { params: { id: batch.id }, body });
    expect(codesOf(again)).toEqual(['stamp-used-otherwise']);
  });

  it('stops the word that a finished base is firm, and what is begun of it for sale, until it is answered', async () => {
    const { id, lotId } = await makeBatch(at.bench, inGrams(at.shop.baseRevision, '800'));
    const base = await at.bench.get('getBatch', { params: { id } });
    at.bench.setClock('2026-11-27T12:00:00Z');
    const claim = await keep(keptAddition(base, 1, '279'));
    const firm = () => at.bench.ask('sayFirm', { params: { id: lotId ?? '' }, body: { remark: '' } });
    expect(codesOf(await firm())).toEqual(['claims-open']);
    await answer(claim.id, { how: 'aside', reason: 'The same tub.' });
    expect(codesOf(await firm())).toEqual([]);
    const later = await keep(keptAddition(base, 1, '278'));
    const wish = inGrams(at.shop.mixtureRevision, '300');
    const { hindrances } = await at.bench.get('planBatch', { body: wish });
    expect(hindrances).toMatchObject([{ code: 'hindrance-asked', parameters: { batch: base.number } }]);
    expect(codesOf(await at.bench.ask('startBatch', { body: { wish } }))).toEqual(['batch-hindered']);
    await answer(later.id, { how: 'aside', reason: 'The same tub.' });
    expect(codesOf(await at.bench.ask('startBatch', { body: { wish } }))).toEqual([]);
  });

  it('that is a count of a lot that ran out may be entered, and names the lot', async () => {
    const batch = await at.startBase();
    const lotId = at.additionAt(batch, 0).lotId ?? '';
    const { lot } = await at.bench.get('getLot', { params: { id: lotId } });
    const stamp = at.bench.stamp();
    const body = { stamp, grossGrams: '0', tareGrams: '0', reason: 'It ran out.', isGainSure: false };
    const claim = await at.bench.get('keepClaim', {
      body: {
        entry: { id: stamp.id, route: 'countLot', params: { id: lotId }, body, at: stamp.at },
        problems: refusal('tablet-clock-behind'),
      },
    });
    expect(claim).toMatchObject({ subjectKind: 'workshop', mayEnter: { instead: null } });
    expect(claim.facts.map(({ parameters }) => parameters.value)).toContain(`${lot.number}, Shea butter`);
    expect(await answer(claim.id, { how: 'enter', reason: 'The tub is empty.' })).toMatchObject({ ok: true });
    expect(await at.onHand(lotId)).toBe('0');
  });

  it('strikes nothing but what stands in its place', async () => {
    const { batch, claim } = await weighedTwice();
    await at.weigh(batch, 1, '280');
    const other = at.additionAt(await reread(batch), 1).done?.entryId ?? '';
    expect(await answer(claim.id, { how: 'enter', reason: 'A slip.', strikes: other })).toMatchObject({
      ok: false,
      problems: [{ code: 'thing-not-found', where: 'strikes' }],
    });
    expect(at.additionAt(await reread(batch), 1).done?.actualGrams).toBe('280');
  });

  it('that is a decision and no weighing can be set aside only', async () => {
    const batch = await at.startBase();
    const stamp = at.bench.stamp();
    const claim = await at.bench.get('keepClaim', {
      body: {
        entry: {
          id: stamp.id,
          route: 'abandonBatch',
          params: { id: batch.id },
          body: { stamp, reason: 'Given up.' },
          at: stamp.at,
        },
        problems: refusal('claims-open'),
      },
    });
    expect(claim.mayEnter).toBeNull();
    expect(await answer(claim.id, { how: 'enter', reason: 'Do it.' })).toMatchObject({
      ok: false,
      problems: [{ code: 'claim-not-enterable' }],
    });
    expect((await reread(batch)).state).toBe('making');
  });

  it('entered in the place of what stood there, that is struck and its grams are back', async () => {
    const { batch, claim } = await weighedTwice();
    const before = Number(await onHandOf(batch, 0));
    const strikes = claim.mayEnter?.instead?.entryId;
    await answer(claim.id, { how: 'enter', reason: 'The first was a slip.', strikes });
    const after = await reread(batch);
    expect(at.additionAt(after, 0).done).toMatchObject({ actualGrams: '519', by: 'Bo Marsh' });
    expect(after.struck).toMatchObject([{ actualGrams: '520', why: 'The first was a slip.' }]);
    expect(Number(await onHandOf(batch, 0))).toBe(before + 520 - 519);
  });

  it('belongs to its batch still where that was given up meanwhile, and what went in is used', async () => {
    const batch = await at.startBase();
    await at.bench.get('abandonBatch', { params: { id: batch.id }, body: { reason: 'It split.' } });
    const claim = await keep(keptAddition(batch, 0, '519'), 'batch-not-making');
    const before = Number(await onHandOf(batch, 0));
    expect((await reread(batch)).claims).toHaveLength(1);
    expect(await answer(claim.id, { how: 'enter', reason: 'It was in before.' })).toMatchObject({ ok: true });
    expect(Number(await onHandOf(batch, 0))).toBe(before - 519);
    expect((await reread(batch)).state).toBe('abandoned');
  });

  it('leaves everything as it was where it is refused even with the explanation', async () => {
    const { batch, claim } = await weighedTwice();
    const strikes = claim.mayEnter?.instead?.entryId;
    // The strike goes before it, and is undone with it.
    const at2031 = { how: 'enter' as const, reason: 'A slip.', strikes, at: '2031-01-01T08:00:00Z' };
    expect(codesOf(await answer(claim.id, at2031))).toEqual(['entry-in-future']);
    const after = await reread(batch);
    expect(at.additionAt(after, 0).done?.actualGrams).toBe('520');
    expect(after.struck).toEqual([]);
    expect(after.claims[0]?.answer).toBeNull();
    const check = await at.bench.get('checkUp');
    expect(check.findings.filter(({ isSound }) => !isSound)).toEqual([]);
  });

  it('leaves a sound chain, in which every row belongs to an entry of its own', async () => {
    const { claim } = await weighedTwice();
    await answer(claim.id, { how: 'enter', reason: 'Slip.', strikes: claim.mayEnter?.instead?.entryId });
    const { findings } = await at.bench.get('checkUp');
    expect(findings.filter(({ isSound }) => !isSound)).toEqual([]);
  });

  it('is answered once', async () => {
    const { claim } = await weighedTwice();
    await answer(claim.id, { how: 'aside', reason: 'The same.' });
    expect(await answer(claim.id, { how: 'enter', reason: 'No, both.' })).toMatchObject({
      ok: false,
      problems: [{ code: 'claim-answered-already', found: 'aside', parameters: { by: 'Ada Quill' } }],
    });
  });

  it('of a tablet whose clock was ahead is kept as told, and entered at the time that both clocks tell', async () => {
    const batch = await at.startBase();
    at.bench.setClock('2026-11-26T12:00:00.000Z');
    // Two hours ahead: it told both times by the same clock.
    const entry = keptAddition(batch, 0, '519', { at: '2026-11-26T13:30:00.000Z' });
    const claim = await at.bench.get('keepClaim', {
      body: {
        stamp: at.bench.stamp({ at: '2026-11-26T14:00:00.000Z' }),
        entry,
        problems: refusal('entry-in-future'),
      },
    });
    expect([claim.at, claim.mayEnter?.likelyAt]).toEqual([
      '2026-11-26T13:30:00.000Z',
      '2026-11-26T11:30:00.000Z',
    ]);
    const asTold = await answer(claim.id, { how: 'enter', reason: 'Weighed.' });
    expect(asTold).toMatchObject({ ok: false, problems: [{ code: 'entry-in-future' }] });
    const put = { how: 'enter' as const, reason: 'Its clock was wrong.', at: claim.mayEnter?.likelyAt };
    expect(await answer(claim.id, put)).toMatchObject({ ok: true });
    expect(at.additionAt(await reread(batch), 0).done?.at).toBe('2026-11-26T11:30:00.000Z');
  });

  it('of a page that another program wrote can be set aside only', async () => {
    const batch = await at.startBase();
    const entry = { ...keptAddition(batch, 0, '519'), route: 'stirTheMoon' };
    const claim = await keep(entry, 'route-unknown');
    expect(claim).toMatchObject({ subjectKind: 'workshop', subjectNumber: null, mayEnter: null });
    expect(await answer(claim.id, { how: 'enter', reason: 'Do it.' })).toMatchObject({
      ok: false,
      problems: [{ code: 'claim-not-enterable', found: 'stirTheMoon' }],
    });
    expect(await answer(claim.id, { how: 'aside', reason: 'Nobody knows it.' })).toMatchObject({ ok: true });
  });

  it('that nobody knows is not answered', async () => {
    expect(await answer('nothing', { how: 'aside', reason: 'None.' })).toMatchObject({
      ok: false,
      problems: [{ code: 'thing-not-found' }],
    });
  });
});
