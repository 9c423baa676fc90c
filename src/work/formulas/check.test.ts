import { describe, expect, it } from 'vitest';
import {
  baseLine,
  buildBase,
  buildMixture,
  buildReport,
  line,
} from '../../../test/workshop/build-formula.ts';
import { buildIngredient } from '../../../test/workshop/build-stock.ts';
import { constituent, openCheckBench, ranges } from '../../../test/workshop/check-bench.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { say } from '../../words/index.ts';

const hands = openCheckBench();
const { buildOil, check, codesOfReasons } = hands;

describe('the check of a revision', () => {
  it('says yes where report, law and IFRA are kept, and what has to be named', async () => {
    const oil = await buildOil([constituent('Geraniol', '106-24-1', '1')]);
    const { formulaId, revisionId } = await buildMixture(hands.bench, [
      line(hands.fat, '990'),
      line(oil, '10'),
    ]);
    await buildReport(hands.bench, {
      formulaIds: [formulaId],
      ranges: [ranges(hands.fat, '50', '99'), ranges(oil, '0', '1')],
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
      const { formulaId, revisionId } = await buildMixture(hands.bench, [
        line(hands.fat, '990'),
        line(oil, '10'),
      ]);
      await buildReport(hands.bench, {
        formulaIds: [formulaId],
        ranges: [ranges(hands.fat, '0', '100'), ranges(oil, '0', '100')],
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
    const base = await buildBase(hands.bench, [line(hands.fat, '99'), line(oil, '1')]);
    const { revisionId } = await buildMixture(hands.bench, [
      baseLine(base.formulaId, '15'),
      line(hands.fat, '85'),
    ]);
    const verdicts = (await check(revisionId, 'GB')).markets[0]?.verdicts;
    // 15 % of a base with 1 % of it: 0.15 %.
    expect(verdicts?.find((row) => row.name === 'Citral')).toMatchObject({
      mostPercent: '0.15',
      verdict: 'within',
    });
  });

  it('asks for the market it is told, and refuses one it does not know', async () => {
    const { revisionId } = await buildMixture(hands.bench, [line(hands.fat, '1')]);
    expect((await check(revisionId, 'EU')).markets.map((row) => row.market)).toEqual(['EU']);
    const params = { id: revisionId };
    expect(codesOf(await hands.bench.ask('checkRevision', { params, query: { markets: 'GB,FR' } }))).toEqual([
      'value-not-one-of',
    ]);
    expect(codesOf(await hands.bench.ask('checkRevision', { params: { id: 'lost' } }))).toEqual([
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
    const { revisionId } = await buildMixture(hands.bench, [line(oil, '1'), line(hands.fat, '99')]);
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
    const { revisionId } = await buildMixture(hands.bench, [line(hands.fat, '1')]);
    const params = { id: revisionId };
    const usual = await hands.bench.get('checkRevision', { params, query: {} });
    expect(usual.markets.map(({ market }) => market)).toEqual(['GB', 'NI', 'EU']);
    expect(usual.markets.flatMap(({ notes }) => notes)).toEqual([]);
  });
});

describe('what a material is called, and its CAS numbers', () => {
  // 80-54-6 is 2-(4-tert-butylbenzyl)propionaldehyde: Regulation (EC) No 1223/2009, Annex II, entry 1666.
  const LILIAL = '80-54-6';
  const verdictsOf = async (more: object) => {
    const scent = await buildIngredient(hands.bench, {
      name: 'Meadow scent',
      supplier: hands.bench.newId(),
      inciEu: 'Parfum',
      role: 'fragrance',
      ...more,
    });
    const { revisionId } = await buildMixture(hands.bench, [line(hands.fat, '999'), line(scent, '1')]);
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
    const scent = await buildIngredient(hands.bench, {
      name: 'Geraniol',
      inciEu: 'Parfum',
      role: 'fragrance',
      cas: ['106-24-1'],
      constituents: [constituent('Geraniol', '106-24-1', '1')],
    });
    const { revisionId } = await buildMixture(hands.bench, [line(hands.fat, '999'), line(scent, '1')]);
    const rows = (await check(revisionId, 'GB')).markets[0]?.verdicts ?? [];
    const named = rows.filter((row) => row.name === 'Geraniol');
    expect(named.map((row) => row.mostPercent)).toEqual(['0.001']);
  });

  it('keeps to the name where a number is shared by several materials', async () => {
    // 8028-48-6 is printed for flower and peel of the orange (entries of Regulation (EU) 2023/1545): the name tells which.
    const oil = await buildOil([constituent('Geraniol', '106-24-1', '1')], {
      cas: ['8028-48-6', '8008-57-9'],
    });
    const { revisionId } = await buildMixture(hands.bench, [line(hands.fat, '990'), line(oil, '10')]);
    expect((await check(revisionId, 'GB')).open.map((row) => row.why.code)).not.toContain(
      'unknown-shared-cas',
    );
  });
});

describe("a supplier's own limit", () => {
  const checked = async (grams: string, mostPercent: string) => {
    const scent = await buildIngredient(hands.bench, {
      name: 'Meadow scent',
      supplier: hands.bench.newId(),
      supplierMostPercent: mostPercent,
      supplierPaper: 'Certificate M-2',
    });
    const { formulaId, revisionId } = await buildMixture(hands.bench, [
      line(hands.fat, '980'),
      line(scent, grams),
    ]);
    await buildReport(hands.bench, {
      formulaIds: [formulaId],
      ranges: [ranges(hands.fat, '0', '100'), ranges(scent, '0', '100')],
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
    const scent = await buildIngredient(hands.bench, {
      name: 'Meadow scent',
      supplierMostPercent: '1',
      supplierPaper: 'Certificate M-2',
    });
    const base = await buildBase(hands.bench, [line(hands.fat, '90'), line(scent, '10')]);
    expect(await codesOfReasons(base.revisionId)).not.toContain('sale-supplier-over');
    const mixture = await buildMixture(hands.bench, [baseLine(base.formulaId, '10'), line(hands.fat, '90')]);
    expect(await codesOfReasons(mixture.revisionId)).not.toContain('sale-supplier-over');
    const strong = await buildMixture(hands.bench, [
      baseLine(base.formulaId, '10.1'),
      line(hands.fat, '89.9'),
    ]);
    expect(await codesOfReasons(strong.revisionId)).toContain('sale-supplier-over');
  });
});
