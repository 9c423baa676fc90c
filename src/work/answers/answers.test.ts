import { describe, expect, it } from 'vitest';
import { buildIngredient } from '../../../test/workshop/build-stock.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openFillingBench } from '../../../test/workshop/filling-bench.ts';

const at = openFillingBench();

const ofProduct = () => at.bench.get('getProductAnswers', { params: { id: at.shop.product } });
const ofRun = (id: string) => at.bench.get('getRunAnswers', { params: { id } });
const verdictOn = (answers: Awaited<ReturnType<typeof ofRun>>, flag: string) =>
  answers.origins.find((row) => row.flag === flag);

/** Writes down that each material of the base comes from these. */
async function sayOrigins(origins: ('tree-nut' | 'peanut')[] | null): Promise<void> {
  for (const { id, version, details } of await at.bench.get('listMaterials'))
    if (details.kind === 'ingredient')
      await at.bench.get('saveMaterial', { body: { id, version, details: { ...details, origins } } });
}

/** The newest mixture has something with peanut in it besides. */
async function addPeanut(): Promise<void> {
  const itemId = await buildIngredient(at.bench, {
    name: 'Peanut oil',
    inciEu: 'Arachis Hypogaea Oil',
    origins: ['peanut'],
  });
  const params = { id: at.shop.mixture };
  const { latest } = await at.bench.get('getFormula', { params });
  if (!latest) throw new Error('the mixture has a revision');
  const [first] = latest.details.lines;
  if (!first) throw new Error('the mixture has lines');
  const more = { ...first, itemKind: 'material' as const, itemId, grams: '5' };
  const details = { ...latest.details, lines: [...latest.details.lines, more] };
  await at.bench.get('saveRevision', { params, body: { version: latest.version, details } });
}

/** What a paper that comes later does to a list: the shea butter is called something else in it. */
async function renameShea(): Promise<void> {
  const all = await at.bench.get('listMaterials');
  const shea = all.find(({ id }) => id === at.shop.materials.shea);
  if (shea?.details.kind !== 'ingredient') throw new Error('shea butter is an ingredient');
  const details = { ...shea.details, inciEu: 'Renamed Butter' };
  await at.bench.get('saveMaterial', { body: { id: shea.id, version: shea.version, details } });
}

describe('what people ask of a product', () => {
  it('is not known while nobody has said what its materials come from', async () => {
    await sayOrigins(null);
    const answers = await ofProduct();
    expect(answers.batchNumber).toBeNull();
    expect(verdictOn(answers, 'peanut')).toMatchObject({ verdict: 'unknown' });
    expect(verdictOn(answers, 'tree-nut')?.materials.length).toBeGreaterThan(0);
  });

  it('is answered from the materials of its bases too', async () => {
    await sayOrigins([]);
    expect(verdictOn(await ofProduct(), 'peanut')?.verdict).toBe('free');
    await sayOrigins(['peanut']);
    expect(verdictOn(await ofProduct(), 'peanut')).toMatchObject({ verdict: 'contains' });
    expect(verdictOn(await ofProduct(), 'sesame')?.verdict).toBe('free');
  });

  it('is never “not in it” against the names that stand on the label, of a product or of a batch', async () => {
    await sayOrigins([]);
    const run = await at.startRun((await at.makeBowl()).id);
    for (const answers of [await ofProduct(), await ofRun(run.id)]) {
      const daisies = verdictOn(answers, 'daisy-family');
      expect(daisies).toMatchObject({ verdict: 'contains' });
      expect(daisies?.byName).toContain('Sunflower oil');
      expect(verdictOn(answers, 'tree-nut')).toMatchObject({
        verdict: 'contains',
        byName: ['Shea butter'],
      });
      expect(verdictOn(answers, 'sesame')?.verdict).toBe('free');
    }
  });

  it('is answered by the batch number from what is in those tins, whatever is made now', async () => {
    await sayOrigins([]);
    const run = await at.startRun((await at.makeBowl()).id);
    await addPeanut();
    const [tin, product] = [await ofRun(run.id), await ofProduct()];
    expect(tin.batchNumber).toBe(run.number);
    expect(verdictOn(tin, 'peanut')?.verdict).toBe('free');
    expect(verdictOn(product, 'peanut')).toMatchObject({ verdict: 'contains', materials: ['Peanut oil'] });
    expect(product.ingredients[0]?.text).toContain('Arachis Hypogaea Oil');
    expect(tin.ingredients[0]?.text).not.toContain('Arachis Hypogaea Oil');
    expect(tin.ingredients[0]?.text).not.toBe('');
  });

  it('is what the label of the batch said when it was printed, and tells where today’s list differs', async () => {
    const run = await at.startRun((await at.makeBowl()).id);
    const listOf = async () => (await ofRun(run.id)).ingredients.find(({ market }) => market === 'GB');
    const before = await listOf();
    expect(before?.printed).toBeNull();
    await at.bench.get('printRunLabels', { params: { id: run.id }, body: { market: 'GB', copies: 5 } });
    expect(await listOf()).toMatchObject({ text: before?.text, printed: { is: 'same', now: before?.text } });
    await renameShea();
    const after = await listOf();
    expect(after?.text).toBe(before?.text);
    expect(after?.printed).toMatchObject({ is: 'other', onlyNow: ['Renamed Butter'] });
    expect(after?.printed?.onlyOnLabel).toHaveLength(1);
  });

  it('is not told as printed where what was printed has no list on it', async () => {
    const run = await at.startRun((await at.makeBowl()).id);
    await at.bench.get('printRunLabels', {
      params: { id: run.id },
      body: { market: 'GB', copies: 5, pieces: ['front'] },
    });
    const listOf = async () => (await ofRun(run.id)).ingredients.find(({ market }) => market === 'GB');
    expect((await listOf())?.printed).toBeNull();
  });

  it('is refused of what is not there', async () => {
    expect(codesOf(await at.bench.ask('getProductAnswers', { params: { id: 'none' } }))).toEqual([
      'thing-not-found',
    ]);
    expect(codesOf(await at.bench.ask('getRunAnswers', { params: { id: 'none' } }))).toEqual([
      'thing-not-found',
    ]);
  });
});
