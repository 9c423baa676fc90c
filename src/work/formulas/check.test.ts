import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  type BuiltFormula,
  baseLine,
  buildBase,
  buildMixture,
  buildReport,
  line,
  revisionOf,
} from '../../../test/workshop/build-formula.ts';
import { buildIngredient } from '../../../test/workshop/build-stock.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { must } from '../../core/problem.ts';
import { say } from '../../words/index.ts';
import { checkForSale } from './index.ts';

let bench: TestWorkshop;
let fat: string;
beforeEach(async () => {
  bench = await openTestWorkshop();
  fat = await buildIngredient(bench, { name: 'Shea butter', inciEu: 'Butyrospermum Parkii Butter' });
});
afterEach(() => bench.close());

const constituent = (name: string, cas: string, most: string) => ({
  name,
  cas,
  leastPercent: '0',
  typicalPercent: '0.1',
  mostPercent: most,
  source: 'invented for the test',
  confidence: 'supplier' as const,
});
/** An oil of the tables, with constituents of our own, so that one figure decides. */
const buildOil = (constituents: ReturnType<typeof constituent>[], more: object = {}) =>
  buildIngredient(bench, {
    name: 'Orange oil',
    inciEu: 'Citrus Aurantium Dulcis Peel Oil',
    cas: ['8008-57-9'],
    plantPart: 'peel',
    process: 'expressed',
    botanical: 'Citrus sinensis',
    role: 'fragrance',
    constituents,
    ...more,
  });
const check = (id: string, markets = 'GB,NI') =>
  bench.get('checkRevision', { params: { id }, query: { markets } });
const codesOfReasons = async (id: string, markets?: string) =>
  (await check(id, markets)).reasons.map((reason) => reason.code);
const ranges = (materialId: string, leastPercent: string, mostPercent: string) => ({
  materialId,
  leastPercent,
  mostPercent,
});

describe('the check of a revision', () => {
  it('says yes where report, law and IFRA are kept, and what has to be named', async () => {
    const oil = await buildOil([constituent('Geraniol', '106-24-1', '1')]);
    const { formulaId, revisionId } = await buildMixture(bench, [line(fat, '990'), line(oil, '10')]);
    await buildReport(bench, {
      formulaIds: [formulaId],
      ranges: [ranges(fat, '50', '99'), ranges(oil, '0', '1')],
    });
    const view = await check(revisionId);
    expect(view).toMatchObject({ answer: 'yes', sentence: { code: 'check-yes' }, open: [], reasons: [] });
    const named = Object.fromEntries(
      view.markets.map((row) => [row.market, row.named.map((one) => one.labelName)]),
    );
    // Geraniol, 0.01 %, is over 0.001 %: Regulation (EC) No 1223/2009, Annex III, entry 78. The peel oil has to be named
    // by Regulation (EU) 2023/1545 in Northern Ireland (new products from 31 July 2026); Great Britain has not taken it over.
    expect(named.GB).toEqual(['Geraniol']);
    expect(named.NI?.sort()).toEqual(['Citrus Aurantium Peel Oil', 'Geraniol']);
    expect(view.report).toMatchObject({
      reference: 'R-1',
      isPast: false,
      rows: [
        { material: 'Shea butter', percent: '99', leastPercent: '50', mostPercent: '99', verdict: 'within' },
        { material: 'Orange oil', percent: '1', leastPercent: '0', mostPercent: '1', verdict: 'within' },
      ],
    });
  });

  it('judges on the most that an oil may hold, the limit itself allowed', async () => {
    // Citral in category 5A: 0.15 % (IFRA Standards, 49th Amendment). 1 % of an oil with 15 % of it is just that.
    const answerWith = async (most: string) => {
      const oil = await buildOil([constituent('Citral', '5392-40-5', most)], { name: `Oil ${most}` });
      const { formulaId, revisionId } = await buildMixture(bench, [line(fat, '990'), line(oil, '10')]);
      await buildReport(bench, {
        formulaIds: [formulaId],
        ranges: [ranges(fat, '0', '100'), ranges(oil, '0', '100')],
      });
      return check(revisionId, 'GB');
    };
    const at = await answerWith('15');
    expect(at.answer).toBe('yes');
    expect(at.markets[0]?.verdicts.find((row) => row.name === 'Citral')).toMatchObject({
      verdict: 'within',
      mostPercent: '0.15',
      typicalPercent: '0.001',
      limitPercent: '0.15',
      kind: 'ifra',
      edition: '49',
      fromMaterials: ['Oil 15'],
    });
    const over = await answerWith('15.0001');
    expect(over).toMatchObject({ answer: 'no', sentence: { code: 'check-no', parameters: { n: 1 } } });
    expect(over.reasons[0]).toMatchObject({
      code: 'sale-over',
      parameters: { substance: 'Citral', percent: '0.150001', limitPercent: '0.15' },
    });
  });

  it('opens bases: what is in a base counts in the finished product', async () => {
    const oil = await buildOil([constituent('Citral', '5392-40-5', '100')]);
    const base = await buildBase(bench, [line(fat, '99'), line(oil, '1')]);
    const { revisionId } = await buildMixture(bench, [baseLine(base.formulaId, '15'), line(fat, '85')]);
    const verdicts = (await check(revisionId, 'GB')).markets[0]?.verdicts;
    // 15 % of a base with 1 % of it: 0.15 %.
    expect(verdicts?.find((row) => row.name === 'Citral')).toMatchObject({
      mostPercent: '0.15',
      verdict: 'within',
    });
  });

  it('asks for the market it is told, and refuses one it does not know', async () => {
    const { revisionId } = await buildMixture(bench, [line(fat, '1')]);
    expect((await check(revisionId, 'EU')).markets.map((row) => row.market)).toEqual(['EU']);
    const params = { id: revisionId };
    expect(codesOf(await bench.ask('checkRevision', { params, query: { markets: 'GB,FR' } }))).toEqual([
      'value-not-one-of',
    ]);
    expect(codesOf(await bench.ask('checkRevision', { params: { id: 'lost' } }))).toEqual([
      'thing-not-found',
    ]);
  });
});

describe('the United States', () => {
  it('are unknown by law, said once, until a named person decides; IFRA and the report hold there too', async () => {
    const oil = await buildOil([
      constituent('Citral', '5392-40-5', '1'),
      constituent('Linalool', '78-70-6', '20'),
    ]);
    const { revisionId } = await buildMixture(bench, [line(oil, '1'), line(fat, '99')]);
    const answer = await check(revisionId, 'US');
    const [us] = answer.markets;
    expect(us?.verdicts.filter(({ kind }) => kind === 'law')).toMatchObject([
      { verdict: 'unknown', name: 'everything in it, by the law there' },
    ]);
    expect(us?.verdicts.filter(({ kind }) => kind === 'ifra').map(({ verdict }) => verdict)).toContain(
      'within',
    );
    expect(us?.verdicts.some(({ verdict }) => verdict === 'no-rule')).toBe(false);
    expect(us?.named).toEqual([]);
    expect(us?.notes.map(({ code }) => code)).toEqual([
      'market-us-federal-only',
      'market-us-no-allergen-list',
    ]);
    expect(answer.answer).not.toBe('yes');
    const why = answer.open.map((question) => question.why.code);
    expect(why.filter((code) => code === 'unknown-law-not-in-tables')).toHaveLength(1);
  });

  it('are looked at only where somebody asks or sells there', async () => {
    const { revisionId } = await buildMixture(bench, [line(fat, '1')]);
    const params = { id: revisionId };
    const usual = await bench.get('checkRevision', { params, query: {} });
    expect(usual.markets.map(({ market }) => market)).toEqual(['GB', 'NI', 'EU']);
    expect(usual.markets.flatMap(({ notes }) => notes)).toEqual([]);
  });
});

describe('what a material is called, and its CAS numbers', () => {
  // 80-54-6 is 2-(4-tert-butylbenzyl)propionaldehyde: Regulation (EC) No 1223/2009, Annex II, entry 1666.
  const LILIAL = '80-54-6';
  const verdictsOf = async (more: object) => {
    const scent = await buildIngredient(bench, {
      name: 'Meadow scent',
      supplier: bench.newId(),
      inciEu: 'Parfum',
      role: 'fragrance',
      ...more,
    });
    const { revisionId } = await buildMixture(bench, [line(fat, '999'), line(scent, '1')]);
    const view = await check(revisionId, 'GB');
    return (view.markets[0]?.verdicts ?? []).map((row) => row.verdict);
  };

  it('looks up every number: the one that is prohibited counts, wherever it stands', async () => {
    expect(await verdictsOf({ cas: ['106-24-1', LILIAL] })).toContain('prohibited');
    expect(await verdictsOf({ cas: [LILIAL, '106-24-1'] })).toContain('prohibited');
    expect(await verdictsOf({ cas: [`106-24-1, ${LILIAL}`] })).toContain('prohibited');
  });

  it('looks up every number of a constituent, whatever the constituent is called', async () => {
    const of = (name: string, cas: string) => ({ constituents: [constituent(name, cas, '1')] });
    expect(await verdictsOf(of('Aldehyde blend', `106-24-1/${LILIAL}`))).toContain('prohibited');
    expect(await verdictsOf(of('Geraniol', LILIAL))).toContain('prohibited');
  });

  it('counts what is in a blend as added, with a role or without, and what is in a plant as natural', async () => {
    // Annex II, entry 360: safrole is prohibited unless it is in a natural essence; there its limit is 100 mg/kg.
    const safrole = { constituents: [constituent('Safrole', '94-59-7', '1')] };
    expect(await verdictsOf({ ...safrole })).toContain('prohibited');
    expect(await verdictsOf({ ...safrole, role: null })).toContain('prohibited');
    const plant = { inciEu: 'Myristica Fragrans Kernel Oil', name: 'Nutmeg oil' };
    expect(await verdictsOf({ ...safrole, ...plant })).not.toContain('prohibited');
    expect(await verdictsOf({ ...safrole, botanical: 'Myristica fragrans' })).not.toContain('prohibited');
  });

  it('looks up the name on the tub beside the label name', async () => {
    expect(await verdictsOf({ name: 'Lilial' })).toContain('prohibited');
  });

  it('does not count a constituent twice because its number stands with the material too', async () => {
    // 1 % of it in 0.1 %: geraniol may reach 0.001 %, not 0.101 %.
    const scent = await buildIngredient(bench, {
      name: 'Geraniol',
      inciEu: 'Parfum',
      role: 'fragrance',
      cas: ['106-24-1'],
      constituents: [constituent('Geraniol', '106-24-1', '1')],
    });
    const { revisionId } = await buildMixture(bench, [line(fat, '999'), line(scent, '1')]);
    const rows = (await check(revisionId, 'GB')).markets[0]?.verdicts ?? [];
    const named = rows.filter((row) => row.name === 'Geraniol');
    expect(named.map((row) => row.mostPercent)).toEqual(['0.001']);
  });

  it('keeps to the name where a number is shared by several materials', async () => {
    // 8028-48-6 is printed for flower and peel of the orange (entries of Regulation (EU) 2023/1545): the name tells which.
    const oil = await buildOil([constituent('Geraniol', '106-24-1', '1')], {
      cas: ['8028-48-6', '8008-57-9'],
    });
    const { revisionId } = await buildMixture(bench, [line(fat, '990'), line(oil, '10')]);
    expect((await check(revisionId, 'GB')).open.map((row) => row.why.code)).not.toContain(
      'unknown-shared-cas',
    );
  });
});

describe('the report in the check', () => {
  let oil: string;
  let mixture: BuiltFormula;
  beforeEach(async () => {
    oil = await buildOil([constituent('Geraniol', '106-24-1', '1')]);
    mixture = await buildMixture(bench, [line(fat, '99'), line(oil, '1')]);
  });
  const report = (more: object = {}) =>
    buildReport(bench, {
      formulaIds: [mixture.formulaId],
      ranges: [ranges(fat, '0', '100'), ranges(oil, '0', '100')],
      ...more,
    });

  it('stops the sale where there is none', async () => {
    expect(await codesOfReasons(mixture.revisionId)).toEqual(['sale-report-missing']);
    expect((await check(mixture.revisionId)).report).toBeNull();
  });

  it('binds by both ends of its ranges, each end allowed itself', async () => {
    const id = await report({ ranges: [ranges(fat, '99', '99'), ranges(oil, '1', '1')] });
    expect(await codesOfReasons(mixture.revisionId)).toEqual([]);
    const change = (version: number, own: ReturnType<typeof ranges>[]) =>
      bench.get('saveReport', {
        body: {
          id,
          version,
          details: {
            reference: 'R-1',
            assessor: 'A',
            signedOn: '2026-10-01',
            reviewBy: '2027-10-01',
            baseFormulaId: null,
            formulaIds: [mixture.formulaId],
            markets: ['GB', 'NI'],
            uses: ['leave-on'],
            ranges: own,
          },
        },
      });
    await change(1, [ranges(fat, '99.000001', '100'), ranges(oil, '0', '0.999999')]);
    const view = await check(mixture.revisionId);
    expect(view.answer).toBe('no');
    expect(view.report?.rows.map((row) => row.verdict)).toEqual(['under', 'over']);
    expect(view.reasons.map((reason) => reason.code).sort()).toEqual([
      'sale-report-below',
      'sale-report-over',
    ]);
    await change(2, [ranges(fat, '0', '100')]);
    expect(await codesOfReasons(mixture.revisionId)).toEqual(['sale-report-not-covered']);
  });

  it('has to be for the market', async () => {
    await report({ markets: ['GB'] });
    expect(await codesOfReasons(mixture.revisionId, 'GB')).toEqual([]);
    const { reasons } = await check(mixture.revisionId);
    expect(reasons).toMatchObject([{ code: 'sale-report-missing', parameters: { markets: 'NI' } }]);
  });

  it('may be one for each market', async () => {
    await report({ reference: 'UK-1', markets: ['GB'] });
    await report({ reference: 'EU-1', markets: ['NI', 'EU'] });
    expect((await check(mixture.revisionId)).answer).toBe('yes');
  });

  it('has to be for the use and the formula', async () => {
    await report({ uses: ['rinse-off'] });
    const other = await buildMixture(bench, [line(fat, '1')]);
    await report({ formulaIds: [other.formulaId] });
    expect(await codesOfReasons(mixture.revisionId)).toEqual(['sale-report-missing']);
  });

  it('is the newest by the day it was signed', async () => {
    await report({ reference: 'Newer', signedOn: '2026-11-01', ranges: [ranges(fat, '0', '100')] });
    await report({ reference: 'Older', signedOn: '2026-09-01' });
    expect((await check(mixture.revisionId)).report?.reference).toBe('Newer');
    expect(await codesOfReasons(mixture.revisionId)).toEqual(['sale-report-not-covered']);
  });

  it('stops the sale once its review day is past, and says so for sixty days before', async () => {
    await report({ reviewBy: '2026-11-25' });
    const past = await check(mixture.revisionId);
    expect(past).toMatchObject({ answer: 'no', report: { isPast: true } });
    expect(past.reasons.map((reason) => reason.code)).toEqual(['sale-report-review-passed']);
    expect(past.reasons.map((reason) => say(reason))[0]).toContain('by 25 November 2026');
    const reasonsBy = async (signedOn: string, reviewBy: string) => {
      await report({ signedOn, reviewBy });
      return codesOfReasons(mixture.revisionId);
    };
    // Today is 26 November: on the day itself, thirty days before it, and one more.
    expect(await reasonsBy('2026-11-01', '2026-11-26')).toEqual(['sale-report-review-close']);
    expect(await reasonsBy('2026-11-02', '2027-01-25')).toEqual(['sale-report-review-close']);
    expect(await reasonsBy('2026-11-03', '2027-01-26')).toEqual([]);
  });

  it('has to name the base that the formula is made with', async () => {
    const base = await buildBase(bench, [line(fat, '1')]);
    const other = await buildBase(bench, [line(fat, '1')]);
    const scented = await buildMixture(bench, [baseLine(base.formulaId, '99'), line(oil, '1')]);
    await report({ formulaIds: [scented.formulaId], baseFormulaId: other.formulaId });
    expect(await codesOfReasons(scented.revisionId)).toEqual(['sale-report-base-not-covered']);
    await report({ formulaIds: [scented.formulaId], baseFormulaId: base.formulaId, signedOn: '2026-11-01' });
    expect(await codesOfReasons(scented.revisionId)).toEqual([]);
  });

  it('of a base only has to know its materials, since the ranges are of the finished product', async () => {
    const base = await buildBase(bench, [line(fat, '1')]);
    expect(await codesOfReasons(base.revisionId)).toEqual(['sale-report-missing']);
    await report({
      formulaIds: [],
      baseFormulaId: base.formulaId,
      ranges: [ranges(fat, '10', '60'), ranges(oil, '0.1', '1')],
    });
    expect(await codesOfReasons(base.revisionId)).toEqual([]);
  });
});

describe('what no source tells', () => {
  let mixture: BuiltFormula;
  beforeEach(async () => {
    // The law asks for a peroxide value of this oil (Annex III, entry 122): only its certificate knows it.
    const cedar = await buildIngredient(bench, {
      name: 'Atlas cedar',
      inciEu: 'Cedrus Atlantica Wood Oil',
      plantPart: 'wood',
      process: 'distilled',
      botanical: 'Cedrus atlantica',
      role: 'fragrance',
      constituents: [constituent('Geraniol', '106-24-1', '0.1')],
    });
    mixture = await buildMixture(bench, [line(fat, '99'), line(cedar, '1')]);
    await buildReport(bench, {
      formulaIds: [mixture.formulaId],
      ranges: [ranges(fat, '0', '100'), ranges(cedar, '0', '100')],
    });
  });
  const open = async (markets?: string) => (await check(mixture.revisionId, markets)).open;
  const decide = (
    key: string,
    verdict: 'accepted' | 'refused' | 'open-again',
    more: { corrects?: string; stamp?: ReturnType<typeof bench.stamp>; reason?: string } = {},
  ) =>
    bench.ask('decideUnknown', {
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
    const stamp = bench.stamp({ by: bench.people.second });
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
    const first = bench.stamp();
    await decide(key, 'accepted', { stamp: first });
    expect(
      codesOf(await decide(key, 'refused', { corrects: first.id, reason: 'It was another lot.' })),
    ).toEqual([]);
    const view = await check(mixture.revisionId);
    expect(view.answer).toBe('no');
    expect(view.reasons).toMatchObject([{ code: 'sale-unknown-refused' }]);
    expect(view.open[0]?.decided).toMatchObject({ verdict: 'refused', reason: 'It was another lot.' });
    const kept = await bench.context.storage.db.selectFrom('decision').selectAll().execute();
    expect(kept.map((row) => row.verdict)).toEqual(['accepted', 'refused']);
    expect(codesOf(await decide(key, 'accepted', { corrects: first.id }))).toEqual(['decided-already']);
  });

  it('is taken back with a reason: the question is open again, and what was decided stays readable', async () => {
    const key = (await open())[0]?.key ?? '';
    const first = bench.stamp();
    await decide(key, 'accepted', { stamp: first });
    const back = bench.stamp({ by: bench.people.second });
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
    const stamp = bench.stamp({ by: bench.people.second });
    await decide(key, 'accepted', { corrects, stamp, reason: 'The right paper came.' });
    const { details } = await bench.get('getRevision', { params: { id: mixture.revisionId } });
    const { latest } = await bench.get('getFormula', { params: { id: mixture.formulaId } });
    const body = { version: latest?.version ?? null, details };
    await bench.get('saveRevision', { params: { id: mixture.formulaId }, body });
    const newest = (await bench.get('getFormula', { params: { id: mixture.formulaId } })).latest;
    expect(newest?.number).toBe((latest?.number ?? 0) + 1);
    const former = (id: string) => bench.get('listFormerDecisions', { params: { id } });
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
    const { revisionId } = await buildMixture(bench, [line(fat, '990'), line(linalool, '10')]);
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
    await bench.get('decideUnknown', { params, body });
    const after = await check(revisionId, 'GB');
    const [row] = after.markets[0]?.verdicts.filter((one) => one.certificates.length > 0) ?? [];
    const asked = after.open.find((one) => one.key === row?.certificates[0]?.question);
    expect(asked?.decided).toMatchObject({ verdict: 'accepted', by: 'Ada Quill' });
  });

  it('sent twice is decided once', async () => {
    const key = (await open())[0]?.key ?? '';
    const stamp = bench.stamp();
    await decide(key, 'accepted', { stamp });
    expect(codesOf(await decide(key, 'accepted', { stamp }))).toEqual([]);
    expect(await bench.context.storage.db.selectFrom('decision').selectAll().execute()).toHaveLength(1);
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
    const other = await buildMixture(bench, [line(fat, '1')]);
    expect((await check(other.revisionId)).open).toEqual([]);
    const { itemId } =
      (await bench.get('getRevision', { params: { id: mixture.revisionId } })).lines[1] ?? {};
    const again = await buildMixture(bench, [line(fat, '99'), line(itemId ?? '', '1')]);
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
    const blend = await buildIngredient(bench, {
      name: 'Bought scent',
      inciEu: 'Parfum',
      role: 'fragrance',
      ...UNSAID,
    });
    const { revisionId } = await buildMixture(bench, [line(fat, '99'), line(blend, '1')]);
    expect((await check(revisionId)).open).toMatchObject([
      { substance: 'Bought scent', markets: ['GB', 'NI'], why: { code: 'unknown-composition' } },
    ]);
  });
});

const UNSAID = { constituentsAre: null, constituentsPaper: '' } as const;

describe('what else is in a material', () => {
  const whyOf = async (more: object) => {
    const material = await buildIngredient(bench, { name: 'Meadow scent', supplier: bench.newId(), ...more });
    const { formulaId, revisionId } = await buildMixture(bench, [line(fat, '80'), line(material, '20')]);
    await buildReport(bench, {
      formulaIds: [formulaId],
      ranges: [ranges(fat, '0', '100'), ranges(material, '0', '100')],
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

describe("a supplier's own limit", () => {
  const checked = async (grams: string, mostPercent: string) => {
    const scent = await buildIngredient(bench, {
      name: 'Meadow scent',
      supplier: bench.newId(),
      supplierMostPercent: mostPercent,
      supplierPaper: 'Certificate M-2',
    });
    const { formulaId, revisionId } = await buildMixture(bench, [line(fat, '980'), line(scent, grams)]);
    await buildReport(bench, {
      formulaIds: [formulaId],
      ranges: [ranges(fat, '0', '100'), ranges(scent, '0', '100')],
    });
    return check(revisionId, 'GB');
  };

  it('binds beside law and report, the figure itself allowed, and says whose it is', async () => {
    const at = await checked('20', '2');
    expect(at.answer).toBe('yes');
    expect(at.markets[0]?.verdicts).toContainEqual(
      expect.objectContaining({
        name: 'Meadow scent',
        kind: 'supplier',
        verdict: 'within',
        limitPercent: '2',
      }),
    );
    const over = await checked('20', '1.999999');
    expect(over.answer).toBe('no');
    expect(over.reasons.map((reason) => say(reason))).toEqual([
      'Meadow scent is 2 %; its supplier allows at most 1.999999 % (Certificate M-2; Great Britain).',
    ]);
  });

  it('is of the finished product, and not of a base that is still to be diluted', async () => {
    const scent = await buildIngredient(bench, {
      name: 'Meadow scent',
      supplierMostPercent: '1',
      supplierPaper: 'Certificate M-2',
    });
    const base = await buildBase(bench, [line(fat, '90'), line(scent, '10')]);
    expect(await codesOfReasons(base.revisionId)).not.toContain('sale-supplier-over');
    const mixture = await buildMixture(bench, [baseLine(base.formulaId, '10'), line(fat, '90')]);
    expect(await codesOfReasons(mixture.revisionId)).not.toContain('sale-supplier-over');
    const strong = await buildMixture(bench, [baseLine(base.formulaId, '10.1'), line(fat, '89.9')]);
    expect(await codesOfReasons(strong.revisionId)).toContain('sale-supplier-over');
  });
});

describe('a decision and what it was taken upon', () => {
  const CEDAR = {
    name: 'Atlas cedar',
    inciEu: 'Cedrus Atlantica Wood Oil',
    plantPart: 'wood',
    process: 'distilled',
    botanical: 'Cedrus atlantica',
    role: 'fragrance' as const,
    constituents: [constituent('Geraniol', '106-24-1', '0.1'), constituent('Citral', '5392-40-5', '0.1')],
  };
  let cedar: string;
  let base: BuiltFormula;
  let mixture: BuiltFormula;
  beforeEach(async () => {
    cedar = await buildIngredient(bench, CEDAR);
    base = await buildBase(bench, [line(fat, '980'), line(cedar, '20')]);
    mixture = await buildMixture(bench, [baseLine(base.formulaId, '50'), line(fat, '50')]);
    const [question] = await questions();
    await bench.get('decideUnknown', {
      params: { id: mixture.revisionId },
      body: { key: question?.key ?? '', verdict: 'accepted', reason: 'Certificate of lot 7 seen.' },
    });
  });
  const questions = async () => (await check(mixture.revisionId)).open;
  const stands = async () => {
    const [question] = await questions();
    return question?.decided !== null && question?.lapsed === null;
  };
  const changeMaterial = async (id: string, more: object) => {
    const { version, details } = await bench.get('getMaterial', { params: { id } });
    await bench.get('saveMaterial', { body: { id, version, details: { ...details, ...more } } });
  };
  const reviseBase = async (lines: ReturnType<typeof line>[]) => {
    const { latest } = await bench.get('getFormula', { params: { id: base.formulaId } });
    const body = {
      version: latest?.version ?? 0,
      details: revisionOf(lines, { settingHours: { least: 12, most: 24 }, keepMonths: 6 }),
    };
    await bench.get('saveRevision', { params: { id: base.formulaId }, body });
  };

  it('stands while nothing about the thing changes', async () => {
    expect(await stands()).toBe(true);
    await changeMaterial(cedar, { packPrice: '99', caution: 'Strong.', reorderBelow: '5', leadDays: 9 });
    await changeMaterial(cedar, { constituents: [...CEDAR.constituents].reverse() });
    await changeMaterial(fat, { constituents: [constituent('beta-Caryophyllene', '87-44-5', '1')] });
    expect(await stands()).toBe(true);
  });

  it('stands where a base is revised but brings in the same of it', async () => {
    const oil = await buildIngredient(bench, { name: 'Sunflower oil' });
    await reviseBase([line(fat, '490'), line(oil, '490'), line(cedar, '20')]);
    expect(await stands()).toBe(true);
    await reviseBase([line(fat, '98'), line(cedar, '2')]);
    expect(await stands()).toBe(true);
  });

  it('lapses where a revision of the base brings in another amount', async () => {
    await reviseBase([line(fat, '980'), line(cedar, '20.001')]);
    const view = await check(mixture.revisionId);
    expect(view.answer).not.toBe('yes');
    expect(view.open).toMatchObject([
      {
        decided: null,
        lapsed: {
          by: 'Ada Quill',
          verdict: 'accepted',
          reason: 'Certificate of lot 7 seen.',
          at: bench.now(),
        },
      },
    ]);
    const reason = view.reasons.find((each) => each.code === 'sale-unknown-lapsed');
    expect(reason && say(reason)).toContain(
      'Ada Quill decided on it on 26 November 2026, upon another composition',
    );
  });

  it.each([
    [
      'another constituent',
      { constituents: [...CEDAR.constituents, constituent('Linalool', '78-70-6', '1')] },
    ],
    ['another range', { constituents: [constituent('Geraniol', '106-24-1', '0.2')] }],
    ['another number', { cas: ['92201-55-3'] }],
    ['another process', { process: 'extract' }],
    ['another name', { name: 'Cedar of another hill' }],
    ['another supplier', { supplier: 'Another Supplier' }],
  ])('lapses where the material has %s', async (_what, more) => {
    await changeMaterial(cedar, more);
    expect(await stands()).toBe(false);
  });

  it('counts again once the composition is as it was', async () => {
    await changeMaterial(cedar, { cas: ['92201-55-3'] });
    expect(await stands()).toBe(false);
    await changeMaterial(cedar, { cas: [] });
    expect(await stands()).toBe(true);
  });

  it('is taken again upon what stands there now, and upon nothing that changed since it was seen', async () => {
    const seen = (await questions())[0];
    await changeMaterial(cedar, { cas: ['92201-55-3'] });
    const decide = (upon: string | undefined) =>
      bench.ask('decideUnknown', {
        params: { id: mixture.revisionId },
        body: { key: seen?.key ?? '', verdict: 'refused', reason: 'Another oil.', ...(upon && { upon }) },
      });
    expect(codesOf(await decide(seen?.upon))).toEqual(['unknown-changed-meanwhile']);
    expect(codesOf(await decide((await questions())[0]?.upon))).toEqual([]);
    expect(await questions()).toMatchObject([{ decided: { verdict: 'refused' }, lapsed: null }]);
    const kept = await bench.context.storage.db.selectFrom('decision').selectAll().execute();
    expect(kept.map((row) => row.verdict)).toEqual(['accepted', 'refused']);
  });
});

describe('whether a batch may be made for sale', () => {
  const ask = async (id: string) => must(await checkForSale(bench.context, id, ['GB', 'NI']));

  it('lists everything that stops it, each in words', async () => {
    const oil = await buildOil([constituent('Citral', '5392-40-5', '20')]);
    const { revisionId } = await buildMixture(bench, [line(fat, '99'), line(oil, '1')]);
    const { answer, hindrances } = await ask(revisionId);
    expect(answer).toBe('no');
    expect(hindrances.map((one) => one.code)).toEqual(['sale-over', 'sale-report-missing']);
    const said = hindrances.map((one) => say(one));
    expect(said[0]).toContain('Citral may reach 0.2 %, above its limit of 0.15 %');
    for (const sentence of said) expect(sentence).not.toContain('no words yet');
  });

  it('shows an amount with six places, and with more where six would hide that it is over', async () => {
    const oil = await buildOil([constituent('Citral', '5392-40-5', '15.000001')]);
    const { revisionId } = await buildMixture(bench, [line(fat, '990'), line(oil, '10')]);
    // 1 % of 15.000001 % is 0.15000001 %: six places would show the limit itself.
    expect((await ask(revisionId)).hindrances[0]?.parameters).toMatchObject({
      percent: '0.15000001',
      limitPercent: '0.15',
    });
    const third = await buildMixture(bench, [line(fat, '2'), line(oil, '1')]);
    // 15.000001 % of a third is 5.000000333... %.
    expect((await ask(third.revisionId)).hindrances[0]?.parameters).toMatchObject({ percent: '5' });
  });

  it('is never yes for a trial', async () => {
    const { formulaId, revisionId } = await buildMixture(bench, [line(fat, '1')], {
      details: { standing: 'trial' },
    });
    await buildReport(bench, { formulaIds: [formulaId], ranges: [ranges(fat, '0', '100')] });
    expect((await check(revisionId)).answer).toBe('no');
    expect(await ask(revisionId)).toMatchObject({ answer: 'no', hindrances: [{ code: 'sale-trial' }] });
  });

  it('says how much room the tightest rule leaves to each material', async () => {
    const oil = await buildOil([constituent('Citral', '5392-40-5', '10')]);
    const { formulaId, revisionId } = await buildMixture(bench, [line(fat, '99'), line(oil, '1')]);
    await buildReport(bench, {
      formulaIds: [formulaId],
      ranges: [ranges(fat, '0', '99'), ranges(oil, '0', '1.2')],
    });
    const { headroom } = await ask(revisionId);
    // Citral: 0.15 of 0.10 % is 1.5 times; the report: 1.2 of 1 % is 1.2 times, which is tighter.
    expect(headroom.get(oil)?.toString()).toBe('1.2');
    expect(headroom.get(fat)?.toString()).toBe('1');
  });

  it('is asked of the draft as it stands now', async () => {
    const { formulaId, revisionId } = await buildMixture(bench, [line(fat, '1')]);
    await buildReport(bench, { formulaIds: [formulaId], ranges: [ranges(fat, '0', '100')] });
    expect((await ask(revisionId)).answer).toBe('yes');
    const oil = await buildOil([constituent('Citral', '5392-40-5', '20')]);
    await bench.get('saveRevision', {
      params: { id: formulaId },
      body: { version: 1, details: revisionOf([line(fat, '99'), line(oil, '1')]) },
    });
    expect((await ask(revisionId)).answer).toBe('no');
  });
});
