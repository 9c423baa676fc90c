import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  baseLine,
  buildBase,
  buildMixture,
  line,
  revisionOf,
  step,
} from '../../../test/workshop/build-formula.ts';
import { buildIngredient, buildPackaging } from '../../../test/workshop/build-stock.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';

let bench: TestWorkshop;
let fat: string;
let oil: string;
beforeEach(async () => {
  bench = await openTestWorkshop();
  fat = await buildIngredient(bench, { name: 'Shea butter', inciEu: 'Butyrospermum Parkii Butter' });
  oil = await buildIngredient(bench, { name: 'Sunflower oil' });
});
afterEach(() => bench.close());

/** What a batch does to its revision: from then on nobody edits it. */
async function useInBatch(revisionId: string, formulaId: string): Promise<void> {
  const { db } = bench.context.storage;
  const entry = await db.selectFrom('entry').select('id').orderBy('seq', 'desc').executeTakeFirstOrThrow();
  await db
    .insertInto('batch')
    .values({
      id: `batch-of-${revisionId}`,
      entry_id: entry.id,
      number: `X-${revisionId}`,
      formula_id: formulaId,
      revision_id: revisionId,
      purpose: 'trial',
      markets: '["GB"]',
      planned_ug: 1,
      retained_ug: null,
      declined_because: null,
      started_at: bench.now(),
    })
    .execute();
}

describe('formulas', () => {
  it('are added, renamed and listed with their revisions', async () => {
    const base = await buildBase(bench, [line(fat, '600'), line(oil, '400')], {
      name: 'Quiet base',
      code: 'QB',
    });
    await bench.get('saveFormula', {
      body: { id: base.formulaId, version: 1, name: 'Still base', code: 'SB', kind: 'base' },
    });
    const [formula] = await bench.get('listFormulas');
    expect(formula).toMatchObject({
      name: 'Still base',
      code: 'SB',
      kind: 'base',
      version: 2,
      revisions: [{ id: base.revisionId, number: 1, standing: 'for-sale', isFixed: false }],
      latest: { number: 1, totalGrams: '1000' },
    });
    expect(await bench.get('getFormula', { params: { id: base.formulaId } })).toEqual(formula);
  });

  it('may have nothing written down yet', async () => {
    const { id } = await bench.get('saveFormula', {
      body: { name: 'Thought of', code: 'TO', kind: 'mixture' },
    });
    expect(await bench.get('getFormula', { params: { id } })).toMatchObject({ revisions: [], latest: null });
  });

  it('have letters and names of their own', async () => {
    await bench.get('saveFormula', { body: { name: 'Quiet base', code: 'QB', kind: 'base' } });
    const again = await bench.ask('saveFormula', { body: { name: 'quiet base', code: 'QB', kind: 'base' } });
    expect(codesOf(again)).toEqual(['formula-code-taken', 'formula-name-taken']);
    const small = await bench.ask('saveFormula', { body: { name: 'Other', code: 'qb', kind: 'base' } });
    expect(codesOf(small)).toEqual(['format-regex']);
  });

  it('stay base or mixture once they are written down', async () => {
    const { formulaId } = await buildBase(bench, [line(fat, '1')], { name: 'Quiet base', code: 'QB' });
    const body = { id: formulaId, version: 1, name: 'Quiet base', code: 'QB', kind: 'mixture' as const };
    expect(codesOf(await bench.ask('saveFormula', { body }))).toEqual(['formula-kind-fixed']);
  });

  it('are not changed from an old page, nor where they are not', async () => {
    const { id } = await bench.get('saveFormula', { body: { name: 'One', code: 'ONE', kind: 'base' } });
    const body = { id, version: 1, name: 'Two', code: 'TWO', kind: 'base' as const };
    await bench.get('saveFormula', { body });
    expect(await bench.ask('saveFormula', { body: { ...body, name: 'Three' } })).toMatchObject({
      ok: false,
      problems: [{ code: 'changed-meanwhile', found: 1, allowed: 2, parameters: { holds: 'Two' } }],
    });
    expect(
      codesOf(await bench.ask('saveFormula', { body: { ...body, id: 'lost', name: 'L', code: 'LO' } })),
    ).toEqual(['thing-not-found']);
    expect(codesOf(await bench.ask('getFormula', { params: { id: 'lost' } }))).toEqual(['thing-not-found']);
  });
});

describe('a revision', () => {
  it('is typed in grams and shown in percent, by line and by stage', async () => {
    const { revisionId } = await buildMixture(bench, [
      line(fat, '200'),
      line(oil, '50'),
      line(oil, '50', { stage: 'Cool' }),
    ]);
    const view = await bench.get('getRevision', { params: { id: revisionId } });
    expect(view.totalGrams).toBe('300');
    expect(view.lines.map((row) => [row.itemName, row.grams, row.percent])).toEqual([
      ['Shea butter', '200', '66.667'],
      ['Sunflower oil', '50', '16.667'],
      ['Sunflower oil', '50', '16.667'],
    ]);
    // 250 of 300 g is 83.333 %, 50 of 300 g is 16.667 %: together 100 %.
    expect(view.stages).toEqual([
      { name: 'Melt', percent: '83.333', grams: '250' },
      { name: 'Cool', percent: '16.667', grams: '50' },
    ]);
  });

  it('keeps its lines and steps as they were typed', async () => {
    const details = revisionOf([line(fat, '10.50'), line(oil, '2')], {
      settingHours: { least: 12, most: 12 },
      keepMonths: 6,
      note: 'Stir gently.',
      steps: [
        step('melt', 'Melt', { leastCelsius: '70', mostCelsius: '75.5', minutes: '20', caution: 'Hot.' }),
      ],
    });
    const { id } = await bench.get('saveFormula', { body: { name: 'One', code: 'ONE', kind: 'base' } });
    const saved = await bench.get('saveRevision', { params: { id }, body: { version: null, details } });
    const untold = {
      leastHours: null,
      mostHours: null,
      roundMinutes: null,
      rounds: null,
      growsPercent: null,
    };
    const steps = details.steps.map((step) => ({ ...step, ...untold }));
    expect(saved.details).toEqual({ ...details, alsoUsedAs: [], steps });
    expect(saved).toMatchObject({ number: 1, version: 1, isFixed: false });
  });

  it('is written anew in place while no batch used it', async () => {
    const { formulaId, revisionId } = await buildMixture(bench, [line(fat, '100')]);
    const again = await bench.get('saveRevision', {
      params: { id: formulaId },
      body: { version: 1, details: revisionOf([line(fat, '100'), line(oil, '100')]) },
    });
    expect(again).toMatchObject({ id: revisionId, number: 1, version: 2 });
    expect(again.lines.map((row) => row.percent)).toEqual(['50', '50']);
  });

  it('gives the next number once a batch used it, and stays readable', async () => {
    const { formulaId, revisionId } = await buildMixture(bench, [line(fat, '100')]);
    const before = await bench.get('getRevision', { params: { id: revisionId } });
    await useInBatch(revisionId, formulaId);
    const next = await bench.get('saveRevision', {
      params: { id: formulaId },
      body: { version: 1, details: revisionOf([line(oil, '100')]) },
    });
    expect(next).toMatchObject({ number: 2, version: 2, isFixed: false });
    expect(await bench.get('getRevision', { params: { id: revisionId } })).toEqual({
      ...before,
      isFixed: true,
    });
    expect((await bench.get('getFormula', { params: { id: formulaId } })).revisions).toMatchObject([
      { number: 1, isFixed: true },
      { number: 2, isFixed: false },
    ]);
  });

  it('is refused from the second of two tabs, which is told what the first wrote', async () => {
    const { formulaId } = await buildMixture(bench, [line(fat, '100')]);
    const save = (details: ReturnType<typeof revisionOf>, version: number | null = 1) =>
      bench.ask('saveRevision', { params: { id: formulaId }, body: { version, details } });
    await save(revisionOf([line(oil, '40')]));
    expect(await save(revisionOf([line(oil, '50')]))).toMatchObject({
      ok: false,
      problems: [
        { code: 'changed-meanwhile', found: 1, allowed: 2, parameters: { holds: 'Sunflower oil 40 g' } },
      ],
    });
    expect(codesOf(await save(revisionOf([line(oil, '50')]), null))).toEqual(['changed-meanwhile']);
  });

  it('is refused from a tab that saw the revision before, even where both were written once', async () => {
    const { formulaId, revisionId } = await buildMixture(bench, [line(fat, '100')]);
    await useInBatch(revisionId, formulaId);
    const body = { version: 1, details: revisionOf([line(oil, '40')]) };
    await bench.get('saveRevision', { params: { id: formulaId }, body });
    expect(codesOf(await bench.ask('saveRevision', { params: { id: formulaId }, body }))).toEqual([
      'changed-meanwhile',
    ]);
  });

  it('sent twice is written once', async () => {
    const { id } = await bench.get('saveFormula', { body: { name: 'One', code: 'ONE', kind: 'base' } });
    const body = { stamp: bench.stamp(), version: null, details: revisionOf([line(fat, '1')]) };
    const first = await bench.get('saveRevision', { params: { id }, body });
    expect(await bench.get('saveRevision', { params: { id }, body })).toEqual(first);
    expect((await bench.get('getFormula', { params: { id } })).revisions).toHaveLength(1);
  });

  const refusedCodes = async (details: Partial<ReturnType<typeof revisionOf>>, lines = [line(fat, '1')]) => {
    const { id } = await bench.get('saveFormula', { body: { name: 'One', code: 'ONE', kind: 'base' } });
    const body = { version: null, details: revisionOf(lines, details) };
    return codesOf(await bench.ask('saveRevision', { params: { id }, body }));
  };

  it('is refused without lines', async () => {
    expect(await refusedCodes({}, [])).toEqual(['formula-without-lines']);
  });

  it('is refused with a comma for a point, nought, less than nothing, or a millionth of a millionth', async () => {
    const lines = ['1,5', '0', '-1', '0.0000001'].map((grams) => line(fat, grams));
    expect(await refusedCodes({}, lines)).toEqual([
      'comma-for-point',
      'mass-zero',
      'mass-negative',
      'mass-too-fine',
    ]);
  });

  it('is refused with packaging, a mixture, or what is not there', async () => {
    const tin = await buildPackaging(bench);
    const mixture = await buildMixture(bench, [line(fat, '1')]);
    const lines = [line(tin, '1'), baseLine(mixture.formulaId, '1'), line('lost', '1')];
    expect(await refusedCodes({}, lines)).toEqual([
      'packaging-in-formula',
      'mixture-in-formula',
      'thing-not-found',
    ]);
  });

  it('is refused with ranges that cross and words that no rule uses', async () => {
    expect(
      await refusedCodes({
        settingHours: { least: 13, most: 12 },
        bodyPart: 'elbow',
        productType: 'paint',
        steps: [step('melt', 'Melt', { leastCelsius: '75', mostCelsius: '74.9', minutes: '0' })],
      }),
    ).toEqual([
      'value-not-one-of',
      'value-not-one-of',
      'setting-range-crossed',
      'celsius-range-crossed',
      'value-not-above',
    ]);
  });

  it('is asked again where category or product type of one of its uses say otherwise', async () => {
    const bath = { use: 'leave-on' as const, category: '9', bodyPart: 'body', productType: 'bath-product' };
    const butter = { use: 'rinse-off' as const, category: '5A', productType: '', alsoUsedAs: [bath] };
    expect(await refusedCodes(butter)).toEqual(['use-contradicted', 'use-contradicted', 'use-contradicted']);
  });
});

describe('bases within bases', () => {
  it('are opened however deep they lie', async () => {
    const inner = await buildBase(bench, [line(fat, '1')]);
    const outer = await buildBase(bench, [baseLine(inner.formulaId, '1'), line(oil, '1')]);
    const mixture = await buildMixture(bench, [baseLine(outer.formulaId, '99'), line(oil, '1')]);
    const view = await bench.get('getRevision', { params: { id: mixture.revisionId } });
    expect(view.lines[0]).toMatchObject({ itemName: 'base 2', percent: '99' });
  });

  it('never contain themselves, at once or through others', async () => {
    const inner = await buildBase(bench, [line(fat, '1')], { name: 'Inner', code: 'IN' });
    const outer = await buildBase(bench, [baseLine(inner.formulaId, '1')], { name: 'Outer', code: 'OU' });
    const save = (lines: Parameters<typeof revisionOf>[0]) =>
      bench.ask('saveRevision', {
        params: { id: inner.formulaId },
        body: { version: 1, details: revisionOf(lines) },
      });
    expect(codesOf(await save([baseLine(inner.formulaId, '1')]))).toEqual(['formula-contains-itself']);
    expect(await save([line(fat, '1'), baseLine(outer.formulaId, '1')])).toMatchObject({
      ok: false,
      problems: [{ code: 'formula-contains-itself', found: 'Inner > Outer > Inner' }],
    });
  });

  it('are refused while nothing is written down of them', async () => {
    const { id } = await bench.get('saveFormula', { body: { name: 'Empty', code: 'EM', kind: 'base' } });
    const mixture = await bench.get('saveFormula', { body: { name: 'M', code: 'MX', kind: 'mixture' } });
    const body = { version: null, details: revisionOf([baseLine(id, '1')]) };
    expect(codesOf(await bench.ask('saveRevision', { params: { id: mixture.id }, body }))).toEqual([
      'base-not-found',
    ]);
  });
});
