import { beforeEach, describe, expect, it } from 'vitest';
import { type BuiltFormula, buildMixture, buildReport, line } from '../../../test/workshop/build-formula.ts';
import { buildIngredient } from '../../../test/workshop/build-stock.ts';
import { constituent, openCheckBench, ranges } from '../../../test/workshop/check-bench.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { say } from '../../words/index.ts';

const hands = openCheckBench();
const { buildOil, check } = hands;

describe('what no source tells', () => {
  let mixture: BuiltFormula;
  beforeEach(async () => {
    // The law asks for a peroxide value of this oil (Annex III, entry 122): only its certificate knows it.
    const cedar = await buildIngredient(hands.bench, {
      name: 'Atlas cedar',
      inciEu: 'Cedrus Atlantica Wood Oil',
      plantPart: 'wood',
      process: 'distilled',
      botanical: 'Cedrus atlantica',
      role: 'fragrance',
      constituents: [constituent('Geraniol', '106-24-1', '0.1')],
    });
    mixture = await buildMixture(hands.bench, [line(hands.fat, '99'), line(cedar, '1')]);
    await buildReport(hands.bench, {
      formulaIds: [mixture.formulaId],
      ranges: [ranges(hands.fat, '0', '100'), ranges(cedar, '0', '100')],
    });
  });
  const open = async (markets?: string) => (await check(mixture.revisionId, markets)).open;
  const decide = (
    key: string,
    verdict: 'accepted' | 'refused' | 'open-again',
    more: { corrects?: string; stamp?: ReturnType<typeof hands.bench.stamp>; reason?: string } = {},
  ) =>
    hands.bench.ask('decideUnknown', {
      params: { id: mixture.revisionId },
      body: { key, verdict, reason: 'Certificate of lot 7 seen.', ...more },
    });

  it('is asked once for all markets that ask it', async () => {
    expect(await open()).toMatchObject([
      {
        markets: ['GB', 'NI'],
        decided: null,
        substance: 'Cedrus Atlantica Wood Oil',
        why: { code: 'unknown-needs-certificate' },
      },
    ]);
    expect(await check(mixture.revisionId)).toMatchObject({
      answer: 'decide',
      sentence: { code: 'check-decide', parameters: { n: 1 } },
      reasons: [{ code: 'sale-unknown', parameters: { markets: 'GB, NI' } }],
    });
  });

  it('is decided by a named person with a reason, and asked no more', async () => {
    const [question] = await open();
    const stamp = hands.bench.stamp({ by: hands.bench.people.second });
    await decide(question?.key ?? '', 'accepted', { stamp });
    const view = await check(mixture.revisionId);
    expect(view.answer).toBe('yes');
    expect(view.open).toMatchObject([
      {
        key: question?.key,
        decided: {
          entryId: stamp.id,
          verdict: 'accepted',
          by: 'Bo Marsh',
          reason: 'Certificate of lot 7 seen.',
        },
      },
    ]);
    expect(view.reasons).toMatchObject([{ code: 'sale-unknown-accepted', parameters: { by: 'Bo Marsh' } }]);
  });

  it('is decided once: a second decision is refused and told the first', async () => {
    const [question] = await open();
    const key = question?.key ?? '';
    await decide(key, 'accepted');
    expect(await decide(key, 'refused')).toMatchObject({
      ok: false,
      problems: [{ code: 'decided-already', found: 'accepted', parameters: { by: 'Ada Quill' } }],
    });
    expect((await check(mixture.revisionId)).answer).toBe('yes');
  });

  it('is corrected by naming the decision: the latest counts, both stay readable', async () => {
    const key = (await open())[0]?.key ?? '';
    const first = hands.bench.stamp();
    await decide(key, 'accepted', { stamp: first });
    expect(
      codesOf(await decide(key, 'refused', { corrects: first.id, reason: 'It was another lot.' })),
    ).toEqual([]);
    const view = await check(mixture.revisionId);
    expect(view.answer).toBe('no');
    expect(view.reasons).toMatchObject([{ code: 'sale-unknown-refused' }]);
    expect(view.open[0]?.decided).toMatchObject({ verdict: 'refused', reason: 'It was another lot.' });
    const kept = await hands.bench.context.storage.db.selectFrom('decision').selectAll().execute();
    expect(kept.map((row) => row.verdict)).toEqual(['accepted', 'refused']);
    expect(codesOf(await decide(key, 'accepted', { corrects: first.id }))).toEqual(['decided-already']);
  });

  it('is taken back with a reason: the question is open again, and what was decided stays readable', async () => {
    const key = (await open())[0]?.key ?? '';
    const first = hands.bench.stamp();
    await decide(key, 'accepted', { stamp: first });
    const back = hands.bench.stamp({ by: hands.bench.people.second });
    const reason = 'That was the paper of another lot.';
    expect(codesOf(await decide(key, 'open-again', { stamp: back, corrects: first.id, reason }))).toEqual([]);
    const view = await check(mixture.revisionId);
    expect(view.answer).toBe('decide');
    expect(view.open).toMatchObject([
      {
        key,
        decided: null,
        lapsed: null,
        earlier: [
          { entryId: first.id, verdict: 'accepted', by: 'Ada Quill', reason: 'Certificate of lot 7 seen.' },
          { entryId: back.id, verdict: 'open-again', by: 'Bo Marsh', reason },
        ],
      },
    ]);
    expect(codesOf(await decide(key, 'accepted'))).toEqual([]);
    expect((await check(mixture.revisionId)).open[0]).toMatchObject({
      decided: { verdict: 'accepted' },
      earlier: [{ entryId: first.id }, { entryId: back.id }],
    });
  });

  it('is asked again of a new revision, where what was decided for the one before can be read', async () => {
    const key = (await open())[0]?.key ?? '';
    await decide(key, 'refused');
    const corrects = (await open())[0]?.decided?.entryId ?? '';
    const stamp = hands.bench.stamp({ by: hands.bench.people.second });
    await decide(key, 'accepted', { corrects, stamp, reason: 'The right paper came.' });
    const { details } = await hands.bench.get('getRevision', { params: { id: mixture.revisionId } });
    const { latest } = await hands.bench.get('getFormula', { params: { id: mixture.formulaId } });
    const body = { version: latest?.version ?? null, details };
    await hands.bench.get('saveRevision', { params: { id: mixture.formulaId }, body });
    const newest = (await hands.bench.get('getFormula', { params: { id: mixture.formulaId } })).latest;
    expect(newest?.number).toBe((latest?.number ?? 0) + 1);
    const former = (id: string) => hands.bench.get('listFormerDecisions', { params: { id } });
    expect((await check(newest?.id ?? '')).open).toMatchObject([{ key, decided: null, earlier: [] }]);
    expect(await former(newest?.id ?? '')).toEqual(
      key.split(' | ').map((marketKey) => ({
        marketKey,
        revision: latest?.number,
        entryId: stamp.id,
        verdict: 'accepted',
        by: 'Bo Marsh',
        reason: 'The right paper came.',
        at: stamp.at,
      })),
    );
    expect(await former(mixture.revisionId)).toEqual([]);
  });

  it('cannot be taken back where nothing is decided, nor without naming the decision', async () => {
    const key = (await open())[0]?.key ?? '';
    expect(codesOf(await decide(key, 'open-again'))).toEqual(['corrects-nothing']);
    await decide(key, 'accepted');
    expect(codesOf(await decide(key, 'open-again'))).toEqual(['decided-already']);
    expect((await check(mixture.revisionId)).answer).toBe('yes');
  });

  it('stands with the limit of the same rule, and leads to its question', async () => {
    const linalool = await buildOil([constituent('Linalool', '78-70-6', '1')], { name: 'Linalool oil' });
    const { revisionId } = await buildMixture(hands.bench, [line(hands.fat, '990'), line(linalool, '10')]);
    const params = { id: revisionId };
    const view = await check(revisionId, 'GB');
    const rows = view.markets[0]?.verdicts.filter((row) => row.name === 'Linalool' && row.kind === 'ifra');
    const question = view.open.find((one) => one.key.includes('ifra') && one.substance === 'Linalool');
    // The peroxide value below 20 mmol/l: IFRA Standards, Linalool.
    expect(rows).toMatchObject([
      {
        verdict: 'within',
        certificates: [
          {
            reason:
              'The peroxide value of Linalool has to be known (below 20 mmol/l): IFRA Standards. The certificate of the lot tells it.',
            question: question?.key,
          },
        ],
      },
    ]);
    const body = { key: question?.key ?? '', verdict: 'accepted' as const, reason: 'Certificate seen.' };
    await hands.bench.get('decideUnknown', { params, body });
    const after = await check(revisionId, 'GB');
    const [row] = after.markets[0]?.verdicts.filter((one) => one.certificates.length > 0) ?? [];
    const asked = after.open.find((one) => one.key === row?.certificates[0]?.question);
    expect(asked?.decided).toMatchObject({ verdict: 'accepted', by: 'Ada Quill' });
  });

  it('sent twice is decided once', async () => {
    const key = (await open())[0]?.key ?? '';
    const stamp = hands.bench.stamp();
    await decide(key, 'accepted', { stamp });
    expect(codesOf(await decide(key, 'accepted', { stamp }))).toEqual([]);
    expect(await hands.bench.context.storage.db.selectFrom('decision').selectAll().execute()).toHaveLength(1);
  });

  it('seen for one market is decided for that market alone', async () => {
    const [british] = await open('GB');
    await decide(british?.key ?? '', 'accepted');
    expect((await check(mixture.revisionId, 'GB')).answer).toBe('yes');
    expect((await check(mixture.revisionId)).answer).toBe('decide');
    expect((await open()).map((question) => [question.markets, question.decided?.verdict])).toEqual([
      [['GB'], 'accepted'],
      [['NI'], undefined],
    ]);
  });

  it('is asked anew of another revision', async () => {
    await decide((await open())[0]?.key ?? '', 'accepted');
    const other = await buildMixture(hands.bench, [line(hands.fat, '1')]);
    expect((await check(other.revisionId)).open).toEqual([]);
    const { itemId } =
      (await hands.bench.get('getRevision', { params: { id: mixture.revisionId } })).lines[1] ?? {};
    const again = await buildMixture(hands.bench, [line(hands.fat, '99'), line(itemId ?? '', '1')]);
    expect((await check(again.revisionId)).open).toMatchObject([{ decided: null }]);
  });

  it('is refused a decision on what nobody asks, without a reason, and a correction of nothing', async () => {
    const key = (await open())[0]?.key ?? '';
    expect(codesOf(await decide('GB:law:something-else', 'accepted'))).toEqual(['unknown-not-here']);
    expect(codesOf(await decide(`${key} | GB:law:x`, 'accepted'))).toEqual(['unknown-not-here']);
    expect(codesOf(await decide(key, 'accepted', { reason: ' ' }))).toEqual(['value-too-small']);
    expect(codesOf(await decide(key, 'accepted', { corrects: 'lost' }))).toEqual(['corrects-nothing']);
  });

  it('is what a scent is made of where nobody says it', async () => {
    const blend = await buildIngredient(hands.bench, {
      name: 'Bought scent',
      inciEu: 'Parfum',
      role: 'fragrance',
      ...UNSAID,
    });
    const { revisionId } = await buildMixture(hands.bench, [line(hands.fat, '99'), line(blend, '1')]);
    expect((await check(revisionId)).open).toMatchObject([
      { substance: 'Bought scent', markets: ['GB', 'NI'], why: { code: 'unknown-composition' } },
    ]);
  });
});

const UNSAID = { constituentsAre: null, constituentsPaper: '' } as const;

describe('what else is in a material', () => {
  const whyOf = async (more: object) => {
    const material = await buildIngredient(hands.bench, {
      name: 'Meadow scent',
      supplier: hands.bench.newId(),
      ...more,
    });
    const { formulaId, revisionId } = await buildMixture(hands.bench, [
      line(hands.fat, '80'),
      line(material, '20'),
    ]);
    await buildReport(hands.bench, {
      formulaIds: [formulaId],
      ranges: [ranges(hands.fat, '0', '100'), ranges(material, '0', '100')],
    });
    const { answer, open } = await check(revisionId);
    return { answer, why: open.map((question) => question.why.code), says: open.map(({ why }) => say(why)) };
  };
  const GERANIOL = [constituent('Geraniol', '106-24-1', '0.1')];

  it('is not asked where a paper lists everything that has a limit or must be named', async () => {
    expect(await whyOf({ constituents: GERANIOL })).toMatchObject({ answer: 'yes', why: [] });
    expect(await whyOf({ constituents: [] })).toMatchObject({ answer: 'yes', why: [] });
  });

  it('is asked of a scent of which one trifling constituent is written down', async () => {
    expect(
      await whyOf({ inciEu: 'Parfum', role: 'fragrance', constituents: GERANIOL, ...UNSAID }),
    ).toMatchObject({ answer: 'decide', why: ['unknown-rest-unsaid'] });
  });

  it('is asked of a material without a role as of any other', async () => {
    expect(await whyOf({ inciEu: 'Parfum', role: null, ...UNSAID })).toMatchObject({
      answer: 'decide',
      why: ['unknown-composition'],
    });
  });

  it('says where the part that is known comes from', async () => {
    const asked = await whyOf({
      constituents: GERANIOL,
      constituentsAre: 'partial',
      constituentsPaper: 'published ranges: a handbook',
    });
    expect(asked).toMatchObject({ answer: 'decide', why: ['unknown-rest'] });
    expect(asked.says[0]).toContain('Meadow scent is known (published ranges: a handbook). What else');
  });

  it('is asked of a constituent that none of the tables knows, even where the list is complete', async () => {
    const unheard = await whyOf({ constituents: [...GERANIOL, constituent('Nobodyhol', '', '1')] });
    expect(unheard).toMatchObject({ answer: 'decide', why: ['unknown-constituent'] });
    expect(unheard.says[0]).toContain('Nobodyhol, which is listed for Meadow scent');
    // beta-Caryophyllene stands in the oil tables, without a limit in law: by its number under any spelling.
    expect(await whyOf({ constituents: [constituent('Caryophyllene b', '87-44-5', '1')] })).toMatchObject({
      why: [],
    });
  });
});
