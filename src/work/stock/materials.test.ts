import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  buildIngredient,
  buildLot,
  plainIngredient,
  plainPackaging,
} from '../../../test/workshop/build-stock.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { essentialOils } from '../../reference/index.ts';

let bench: TestWorkshop;
beforeEach(async () => {
  bench = await openTestWorkshop();
});
afterEach(() => bench.close());

const linalool = {
  name: 'Linalool',
  cas: '78-70-6',
  leastPercent: '20',
  typicalPercent: '30',
  mostPercent: '40',
  source: 'invented for the test',
  confidence: 'supplier' as const,
};
const save = (details: ReturnType<typeof plainIngredient>, more: { id?: string; version?: number } = {}) =>
  bench.ask('saveMaterial', { body: { details, ...more } });

describe('a label name of several ingredients', () => {
  it('is refused with each of them and a way out, in both fields; one ingredient is not', async () => {
    const blend = 'Helianthus Annuus Seed Oil, Tocopherol';
    const refused = await save(plainIngredient({ inciEu: blend, inciUs: blend }));
    expect(codesOf(refused)).toEqual(['label-name-holds-several', 'label-name-holds-several']);
    expect(refused.ok ? [] : refused.problems.map(({ where }) => where)).toEqual([
      'details.inciEu',
      'details.inciUs',
    ]);
    const one = plainIngredient({
      inciEu: 'Lavandula Angustifolia Herb Oil/Extract',
      inciUs: 'Citrus Aurantium Dulcis (Orange, Sweet) Peel Oil',
    });
    expect(codesOf(await save(one))).toEqual([]);
  });
});

describe('materials', () => {
  it('keep everything that was said of them, constituents in their order', async () => {
    const details = plainIngredient({
      name: 'Lavender oil',
      origins: ['daisy-family'],
      constituents: [linalool, { ...linalool, name: 'Geraniol', cas: null }],
    });
    const { id } = await bench.get('saveMaterial', { body: { details } });
    expect(await bench.get('getMaterial', { params: { id } })).toEqual({ id, version: 1, details });
    expect(await bench.get('listMaterials')).toHaveLength(1);
  });

  it('tell what nobody has said from what was said to be none', async () => {
    const unsaid = await buildIngredient(bench, { name: 'Unsaid', origins: null });
    const none = await buildIngredient(bench, { name: 'None', origins: [] });
    const originsOf = async (id: string) =>
      (await bench.get('getMaterial', { params: { id } })).details.origins;
    expect(await originsOf(unsaid)).toBeNull();
    expect(await originsOf(none)).toEqual([]);
  });

  it('are changed as a whole, constituents included', async () => {
    const id = await buildIngredient(bench, { constituents: [linalool] });
    const changed = plainIngredient({ name: 'Renamed', constituents: [] });
    await bench.get('saveMaterial', { body: { id, version: 1, details: changed } });
    expect(await bench.get('getMaterial', { params: { id } })).toEqual({ id, version: 2, details: changed });
  });

  it('are refused from the second of two tabs, which is told what the first called it', async () => {
    const id = await buildIngredient(bench);
    await save(plainIngredient({ name: 'First tab' }), { id, version: 1 });
    expect(await save(plainIngredient({ name: 'Second tab' }), { id, version: 1 })).toMatchObject({
      ok: false,
      problems: [{ code: 'changed-meanwhile', found: 1, allowed: 2, parameters: { holds: 'First tab' } }],
    });
  });

  it('may bear one name from two suppliers, and not twice from one', async () => {
    await buildIngredient(bench, { name: 'Shea butter', supplier: 'One' });
    await buildIngredient(bench, { name: 'Shea butter', supplier: 'Other' });
    expect(codesOf(await save(plainIngredient({ name: 'shea butter', supplier: 'one' })))).toEqual([
      'material-name-taken',
    ]);
  });

  it('stay ingredient or packaging, since lots of them are in grams or in pieces', async () => {
    const id = await buildIngredient(bench);
    await buildLot(bench, id);
    expect(codesOf(await save(plainPackaging(), { id, version: 1 }))).toEqual(['material-kind-fixed']);
  });

  it('are refused with fields of the other kind', async () => {
    expect(codesOf(await save(plainPackaging({ packagingKind: null, constituents: [linalool] })))).toEqual([
      'packaging-kind-missing',
      'not-for-packaging',
    ]);
    expect(
      codesOf(await save(plainIngredient({ packagingKind: 'tin', brimMl: '60', tareGrams: '11' }))),
    ).toEqual(['not-for-ingredients', 'not-for-ingredients', 'not-for-ingredients']);
  });

  it('are refused with figures that cannot be', async () => {
    const details = plainIngredient({ densityGramsPerMl: '0', packSize: '-1', reorderBelow: '-0.1' });
    expect(codesOf(await save(details))).toEqual(['value-not-above', 'value-not-above', 'value-too-small']);
    expect(codesOf(await save(plainPackaging({ reorderBelow: '1.5' })))).toEqual(['pieces-not-whole']);
    expect(codesOf(await save(plainIngredient({ densityGramsPerMl: '0,92' })))).toEqual(['comma-for-point']);
  });

  it('name the paper that lists everything in them, and the one that limits them', async () => {
    const complete = plainIngredient({ constituentsAre: 'complete', constituentsPaper: ' ' });
    expect(codesOf(await save(complete))).toEqual(['statement-without-paper']);
    const limited = plainIngredient({ supplierMostPercent: '2' });
    expect(codesOf(await save(limited))).toEqual(['supplier-limit-without-paper']);
    expect(
      codesOf(await save(plainIngredient({ constituentsAre: 'partial', constituentsPaper: '' }))),
    ).toEqual([]);
    expect(
      codesOf(await save(plainPackaging({ constituentsAre: 'complete', constituentsPaper: 'x' }))),
    ).toEqual(['not-for-packaging']);
  });

  it('are refused with a range that crosses, a constituent twice, or more than the whole at the least', async () => {
    const crossed = { ...linalool, leastPercent: '30.1' };
    expect(codesOf(await save(plainIngredient({ constituents: [crossed] })))).toEqual([
      'constituent-range-crossed',
    ]);
    const twice = [linalool, { ...linalool, name: 'linalool' }];
    expect(codesOf(await save(plainIngredient({ constituents: twice })))).toEqual(['constituent-twice']);
    const whole = { ...linalool, leastPercent: '50', typicalPercent: '50', mostPercent: '60' };
    const two = (more: string) => [
      whole,
      { ...whole, name: 'Limonene', leastPercent: more, typicalPercent: '55' },
    ];
    expect(codesOf(await save(plainIngredient({ constituents: two('50') })))).toEqual([]);
    expect(codesOf(await save(plainIngredient({ name: 'More', constituents: two('50.01') })))).toEqual([
      'constituents-above-whole',
    ]);
  });

  it('are not found where they are not', async () => {
    expect(codesOf(await bench.ask('getMaterial', { params: { id: 'lost' } }))).toEqual(['thing-not-found']);
    expect(codesOf(await save(plainIngredient(), { id: 'lost', version: 1 }))).toEqual(['thing-not-found']);
  });
});

describe('suggestions', () => {
  const suggest = (like: string) => bench.get('suggestMaterials', { query: { like } });

  it('come from the tables, what is called exactly so first', async () => {
    const [first] = await suggest('lavender');
    expect(first).toMatchObject({
      key: 'oil-lavender',
      name: 'Lavender',
      details: {
        inciEu: 'Lavandula Angustifolia Oil',
        plantPart: 'flower',
        process: 'distilled',
        role: 'fragrance',
      },
    });
    expect((await suggest('shea butter'))[0]).toMatchObject({
      name: 'Shea butter',
      details: {
        inciEu: 'Butyrospermum Parkii Butter',
        inciUs: 'Butyrospermum Parkii (Shea) Butter',
        constituents: [],
      },
    });
  });

  it('say of each value that they fill in where it comes from', async () => {
    for (const like of ['lavender', 'shea butter', 'beeswax', 'orange']) {
      for (const { details, sources } of await suggest(like)) {
        for (const field of ['inciEu', 'inciUs', 'botanical', 'cas', 'plantPart', 'process'] as const) {
          const value = details[field];
          const isFilled = Array.isArray(value) ? value.length > 0 : Boolean(value);
          expect([field, sources[field] === undefined]).toEqual([field, !isFilled]);
        }
      }
    }
    const [shea] = await suggest('shea butter');
    expect(shea?.sources.inciEu).toMatch(/\w+ \w+/);
  });

  it('find by any spelling, without case and accents, and by several words', async () => {
    expect((await suggest('Lavandula officinalis oil'))[0]?.key).toBe('oil-lavender');
    expect((await suggest('CUPUAÇU'))[0]?.details.inciEu).toBe('Theobroma Grandiflorum Seed Butter');
    expect((await suggest('orange sweet'))[0]?.key).toBe('oil-sweet-orange');
  });

  it('find nothing for nothing, and nothing for what no table has', async () => {
    expect(await suggest('  ')).toEqual([]);
    expect(await suggest('rubber duck')).toEqual([]);
  });

  it('say so where anything of it is from memory, and keep how each constituent is known', async () => {
    const [lavender] = await suggest('lavender');
    expect(lavender?.about).toContain('from memory, check');
    const row = lavender?.details.constituents?.find((one) => one.name === 'linalool');
    const table = essentialOils
      .find((oil) => oil.id === 'lavender')
      ?.constituents.find((one) => one.name === 'linalool');
    expect(row).toMatchObject({
      leastPercent: String(table?.leastPercent),
      mostPercent: String(table?.mostPercent),
      confidence: table?.confidence,
    });
  });

  it('take the wider range where one recalled reaches further than the one read', async () => {
    const widened = essentialOils.flatMap((oil) =>
      oil.constituents
        .filter((one) => one.remembered && one.remembered.mostPercent > (one.mostPercent ?? 0))
        .map((one) => ({ oil, one })),
    );
    expect(widened.length).toBeGreaterThan(5);
    for (const { oil, one } of widened) {
      const suggestion = (await suggest(oil.name)).find((found) => found.key === `oil-${oil.id}`);
      const row = suggestion?.details.constituents?.find((found) => found.name === one.name);
      expect(row).toMatchObject({ mostPercent: String(one.remembered?.mostPercent), confidence: 'memory' });
    }
  });

  it('can each be saved as they are', async () => {
    for (const oil of essentialOils) {
      const found = (await suggest(oil.name)).find((one) => one.key === `oil-${oil.id}`);
      expect(found, oil.name).toBeDefined();
      const details = { ...plainIngredient(), ...found?.details, name: oil.id };
      expect(codesOf(await save(details)), oil.id).toEqual([]);
    }
  });
});
