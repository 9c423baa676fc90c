import { beforeEach, describe, expect, it } from 'vitest';
import {
  type BuiltFormula,
  baseLine,
  buildBase,
  buildMixture,
  line,
  revisionOf,
} from '../../../test/workshop/build-formula.ts';
import { buildIngredient } from '../../../test/workshop/build-stock.ts';
import { constituent, openCheckBench } from '../../../test/workshop/check-bench.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { say } from '../../words/index.ts';

const hands = openCheckBench();
const { check } = hands;

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
    cedar = await buildIngredient(hands.bench, CEDAR);
    base = await buildBase(hands.bench, [line(hands.fat, '980'), line(cedar, '20')]);
    mixture = await buildMixture(hands.bench, [baseLine(base.formulaId, '50'), line(hands.fat, '50')]);
    const [question] = await questions();
    await hands.bench.get('decideUnknown', {
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
    const { version, details } = await hands.bench.get('getMaterial', { params: { id } });
    await hands.bench.get('saveMaterial', { body: { id, version, details: { ...details, ...more } } });
  };
  const reviseBase = async (lines: ReturnType<typeof line>[]) => {
    const { latest } = await hands.bench.get('getFormula', { params: { id: base.formulaId } });
    const body = {
      version: latest?.version ?? 0,
      details: revisionOf(lines, { settingHours: { least: 12, most: 24 }, keepMonths: 6 }),
    };
    await hands.bench.get('saveRevision', { params: { id: base.formulaId }, body });
  };

  it('stands while nothing about the thing changes', async () => {
    expect(await stands()).toBe(true);
    await changeMaterial(cedar, { packPrice: '99', caution: 'Strong.', reorderBelow: '5', leadDays: 9 });
    await changeMaterial(cedar, { constituents: [...CEDAR.constituents].reverse() });
    await changeMaterial(hands.fat, { constituents: [constituent('beta-Caryophyllene', '87-44-5', '1')] });
    expect(await stands()).toBe(true);
  });

  it('stands where a base is revised but brings in the same of it', async () => {
    const oil = await buildIngredient(hands.bench, { name: 'Sunflower oil' });
    await reviseBase([line(hands.fat, '490'), line(oil, '490'), line(cedar, '20')]);
    expect(await stands()).toBe(true);
    await reviseBase([line(hands.fat, '98'), line(cedar, '2')]);
    expect(await stands()).toBe(true);
  });

  it('lapses where a revision of the base brings in another amount', async () => {
    await reviseBase([line(hands.fat, '980'), line(cedar, '20.001')]);
    const view = await check(mixture.revisionId);
    expect(view.answer).not.toBe('yes');
    expect(view.open).toMatchObject([
      {
        decided: null,
        lapsed: {
          by: 'Ada Quill',
          verdict: 'accepted',
          reason: 'Certificate of lot 7 seen.',
          at: hands.bench.now(),
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
      hands.bench.ask('decideUnknown', {
        params: { id: mixture.revisionId },
        body: { key: seen?.key ?? '', verdict: 'refused', reason: 'Another oil.', ...(upon && { upon }) },
      });
    expect(codesOf(await decide(seen?.upon))).toEqual(['unknown-changed-meanwhile']);
    expect(codesOf(await decide((await questions())[0]?.upon))).toEqual([]);
    expect(await questions()).toMatchObject([{ decided: { verdict: 'refused' }, lapsed: null }]);
    const kept = await hands.bench.context.storage.db.selectFrom('decision').selectAll().execute();
    expect(kept.map((row) => row.verdict)).toEqual(['accepted', 'refused']);
  });
});
