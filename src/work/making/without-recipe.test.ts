import { describe, expect, it } from 'vitest';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openMakingBench, type Started } from '../../../test/workshop/making-bench.ts';
import { checkUp } from '../../storage/index.ts';

const at = openMakingBench();
const { onHand } = at;

const weigh = (batchId: string | null, lotId: string, actualGrams: string, more: object = {}) =>
  at.bench.ask('weighWithoutRecipe', {
    body: { batchId, lotId, scaleId: at.shop.scales.middle, actualGrams, ...more },
  });
async function weighed(
  batchId: string | null,
  lotId: string,
  grams: string,
  more: object = {},
): Promise<Started> {
  const view = await weigh(batchId, lotId, grams, more);
  if (!view.ok) throw new Error(view.problems[0]?.code);
  return view.value;
}
const step = (id: string, what: string, more: object = {}) =>
  at.bench.get('stepWithoutRecipe', {
    params: { id },
    body: { kind: 'melt', what, celsius: '72', minutes: '20', ...more },
  });
const finish = (id: string, yieldGrams: string, name: string, more: object = {}) =>
  at.bench.ask('finishWithoutRecipe', { params: { id }, body: { yieldGrams, name, ...more } });

const wrongInFile = async () =>
  (await checkUp(at.bench.context.storage)).filter((finding) => finding.wrong.length > 0);

describe('making without a recipe', () => {
  it('leaves a file in which every row is told by the entry that wrote it, while it goes on and after', async () => {
    const { shea, oil } = at.shop.lots;
    const { id } = await weighed(null, shea, '300');
    await step(id, 'Melt it gently');
    await weighed(id, oil, '100');
    expect(await wrongInFile()).toEqual([]);
    await finish(id, '396', 'Evening butter');
    expect(await wrongInFile()).toEqual([]);
  });

  it('leaves the database’s lock on a recipe that is only made again, and on lines that stand', async () => {
    const { shea } = at.shop.lots;
    await at.startBase();
    const base = await at.bench.get('getRevision', { params: { id: at.shop.baseRevision } });
    await weighed(null, shea, '300', { formulaId: base.formulaId });
    const { revisionId } = await weighed(null, shea, '290');
    const { handle } = at.bench.context.storage;
    for (const change of ["update revision_line set grams = '1'", 'delete from revision_line'])
      expect(() => handle.prepare(`${change} where revision_id = ?`).run(at.shop.baseRevision)).toThrow(
        'revision-fixed',
      );
    expect(() =>
      handle.prepare("update revision_line set grams = '1' where revision_id = ?").run(revisionId),
    ).toThrow('revision-fixed');
  });

  it('takes what is in a vessel as gross less tare, or asks which of the three is wrong', async () => {
    const { shea } = at.shop.lots;
    const inVessel = (grams: string) =>
      weigh(null, shea, grams, { vessel: { grossGrams: '500', tareGrams: '100' } });
    expect(codesOf(await inVessel('10'))).toEqual(['net-not-gross-less-tare']);
    expect(codesOf(await inVessel('400'))).toEqual([]);
  });

  it('is ended on its own way alone: ended as a batch by a recipe it would keep no formula', async () => {
    const { id } = await weighed(null, at.shop.lots.shea, '300');
    const body = { yieldGrams: '298' };
    expect(codesOf(await at.bench.ask('finishBatch', { params: { id }, body }))).toEqual([
      'batch-without-recipe',
    ]);
    expect(codesOf(await finish(id, '298', 'Evening butter'))).toEqual([]);
  });

  it('writes the formula from what was weighed, in percent and in its order, with its steps', async () => {
    const { shea, oil } = at.shop.lots;
    const { id } = await weighed(null, shea, '300');
    await step(id, 'Melt it gently');
    await weighed(id, oil, '100');
    const made = await finish(id, '396', 'Evening butter');
    expect(made.ok && made.value).toMatchObject({
      formulaName: 'Evening butter',
      purpose: 'trial',
      state: 'made',
      outcome: { inputGrams: '400', yieldGrams: '396', lossGrams: '4' },
    });
    const revision = await at.bench.get('getRevision', {
      params: { id: made.ok ? made.value.revisionId : '' },
    });
    expect(revision.lines).toMatchObject([
      { itemName: 'Shea butter', grams: '300', percent: '75', stage: 'Part 1' },
      { itemName: 'Sunflower oil', grams: '100', percent: '25', stage: 'Part 2' },
    ]);
    expect(revision.details).toMatchObject({
      standing: 'trial',
      steps: [{ kind: 'melt', what: 'Melt it gently', leastCelsius: '72', minutes: '20', stage: 'Part 1' }],
    });
    // Weighed again by its sheet: the order is that of the making.
    expect(made.ok && made.value.screens.map((screen) => screen.kind)).toEqual([
      'addition',
      'step',
      'addition',
    ]);
  });

  it('has the ledger right from the first weighing, and goes on where it stood', async () => {
    const { shea } = at.shop.lots;
    const { id, number, formulaName } = await weighed(null, shea, '300');
    expect(number).toBe('MA-0001');
    expect(formulaName).toBe('Made without a recipe, 2026-11-26');
    expect(await onHand(shea)).toBe('1700');
    const again = await at.bench.get('getBatch', { params: { id } });
    expect(again).toMatchObject({ isWithoutRecipe: true, state: 'making' });
    expect(at.additionAt(again, 0)).toMatchObject({ done: { actualGrams: '300', verdict: 'inside' } });
  });

  it('leaves out what was struck: it goes back to its lot, and is no line', async () => {
    const { shea, oil } = at.shop.lots;
    const { id } = await weighed(null, shea, '300');
    const second = await weighed(id, oil, '150');
    const entryId = at.additionAt(second, 1).done?.entryId ?? '';
    await at.bench.get('strikeAddition', { params: { id }, body: { entryId, reason: 'Wrong bottle' } });
    await weighed(id, oil, '100');
    const made = await finish(id, '400', '');
    const revision = await at.bench.get('getRevision', {
      params: { id: made.ok ? made.value.revisionId : '' },
    });
    expect(revision.lines.map((line) => line.grams)).toEqual(['300', '100']);
    expect(await onHand(oil)).toBe('900');
  });

  it('writes nothing more once it is made, and its revision is fixed', async () => {
    const { shea } = at.shop.lots;
    const { id, revisionId } = await weighed(null, shea, '300');
    await finish(id, '300', 'Only shea');
    expect(codesOf(await weigh(id, shea, '10'))).toEqual(['batch-not-making']);
    expect((await at.bench.get('getRevision', { params: { id: revisionId } })).isFixed).toBe(true);
  });

  it('is made again by hand: the formula stays as it was written', async () => {
    const { shea, oil } = at.shop.lots;
    const first = await weighed(null, shea, '300');
    await weighed(first.id, oil, '100');
    await finish(first.id, '400', 'Evening butter');
    const second = await weighed(null, shea, '290', { formulaId: first.formulaId });
    expect(second).toMatchObject({ number: 'MA-0002', formulaName: 'Evening butter' });
    await weighed(second.id, oil, '110');
    expect((await finish(second.id, '400', '')).ok).toBe(true);
    const revision = await at.bench.get('getRevision', { params: { id: first.revisionId } });
    expect(revision.lines.map((line) => line.grams)).toEqual(['300', '100']);
  });

  it('made again under another name, it is asked whether that is a formula of its own, and written down then', async () => {
    const { shea, oil } = at.shop.lots;
    const first = await weighed(null, shea, '300');
    await weighed(first.id, oil, '100');
    await finish(first.id, '400', 'Evening butter');
    const second = await weighed(null, shea, '290', { formulaId: first.formulaId });
    await weighed(second.id, oil, '110');
    expect(await finish(second.id, '400', 'Night butter')).toMatchObject({
      problems: [{ code: 'made-again-named', parameters: { formula: 'Evening butter' } }],
    });
    expect(codesOf(await finish(second.id, '400', 'Night butter', { isNewFormula: true }))).toEqual([]);
    const formulas = await at.bench.get('listFormulas');
    const written = formulas.find(({ name }) => name === 'Night butter');
    expect(written?.latest?.details.lines.map(({ grams }) => grams)).toEqual(['290', '110']);
    expect(written?.latest?.details.standing).toBe('trial');
    const batch = await at.bench.get('getBatch', { params: { id: second.id } });
    expect(batch).toMatchObject({ formulaName: 'Evening butter', state: 'made' });
    expect(await wrongInFile()).toEqual([]);
  });

  it('made again under its own name, there is nothing to ask', async () => {
    const { shea } = at.shop.lots;
    const first = await weighed(null, shea, '300');
    await finish(first.id, '300', 'Evening butter');
    const second = await weighed(null, shea, '290', { formulaId: first.formulaId });
    expect(codesOf(await finish(second.id, '290', 'evening butter'))).toEqual([]);
  });

  it('asks for a name that is free, for goods that may be used, and for something weighed at all', async () => {
    const { shea } = at.shop.lots;
    const { id } = await weighed(null, shea, '300');
    expect(codesOf(await finish(id, '300', 'quiet base'))).toEqual(['formula-name-taken']);
    expect(codesOf(await finish(id, '400', ''))).toEqual(['yield-above-input']);
    expect(codesOf(await weigh(id, at.shop.lots.tin, '5'))).toEqual(['lot-of-another-item']);
    expect(codesOf(await weigh(id, shea, '300'))).toEqual(['reading-doubtful']);
    const planned = await at.startBase();
    expect(codesOf(await weigh(planned.id, shea, '5'))).toEqual(['batch-has-recipe']);
  });

  it('may be given up: what was weighed in stays used', async () => {
    const { shea } = at.shop.lots;
    const { id } = await weighed(null, shea, '300');
    await at.bench.get('abandonBatch', { params: { id }, body: { reason: 'It burnt' } });
    expect(await onHand(shea)).toBe('1700');
    expect(await at.bench.get('listFormulas')).toHaveLength(3);
  });
});
