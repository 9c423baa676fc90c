import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { reviseBase } from '../../../test/workshop/build-making.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { FIVE, openFillingBench } from '../../../test/workshop/filling-bench.ts';
import { countEntries } from '../../../test/workshop/small-file.ts';
import { must } from '../../core/problem.ts';

const at = openFillingBench();
const { makeBowl, startRun } = at;

const svgOf = ({ pieces }: { pieces: { id: string; svg: string }[] }, id: string) =>
  pieces.find((piece) => piece.id === id)?.svg;

describe('the label of a run', () => {
  const label = (id: string, market: 'GB' | 'NI' | 'EU' | 'US') =>
    at.bench.get('getRunLabel', { params: { id }, query: { market } });
  const print = (id: string, market: 'GB' | 'NI' | 'EU' = 'GB') =>
    at.bench.ask('printRunLabels', { params: { id }, body: { market } });
  const pdf = (id: string) => at.bench.ask('getLabelPrintPdf', { params: { id } });
  const changeProduct = async (productId: string, part: object) => {
    const known = (await at.bench.get('listProducts')).find(({ id }) => id === productId);
    if (!known) throw new Error('no such product');
    const { id, version, details } = known;
    await at.bench.get('saveProduct', { body: { id, version, details: { ...details, ...part } } });
  };
  const countWrites = () => countEntries(at.bench.context.storage);

  it('has everything that its market asks for, at true size', async () => {
    const run = await startRun((await makeBowl()).id);
    const view = await label(run.id, 'GB');
    expect(view.missing).toEqual([]);
    // Directive 76/211/EEC, Annex I 3.1: at least 2 mm up to 50 g.
    expect(view.figureHeightMm).toBe(2);
    const text = new Map(view.elements.map((one) => [one.element, one.text]));
    expect(text.get('ingredients')).toBe(
      'Butyrospermum Parkii Butter, Helianthus Annuus Seed Oil, Lavandula Angustifolia Oil, Linalool',
    );
    expect(text.get('batch-number')).toBe('LB-0001');
    expect(text.get('nominal-content')).toBe('35 g');
    expect(text.get('minimum-durability')).toBe('Best used before the end of 06/2027');
    expect(text.get('responsible-person')).toContain('United Kingdom');
    expect(svgOf(view, 'front')).toContain('width="60mm"');
    expect(svgOf(view, 'back')).toContain('Linalool');
  });

  it('carries the responsible person and the allergens of its own market', async () => {
    const run = await startRun((await makeBowl()).id);
    const view = await label(run.id, 'NI');
    const text = new Map(view.elements.map((one) => [one.element, one.text]));
    expect(text.get('responsible-person')).toContain('BT99 9ZZ');
    // Regulation (EU) 2023/1545 lists lavender oils as such; Great Britain does not.
    expect(text.get('ingredients')).toContain('Lavandula');
    expect(text.get('ingredients')).not.toBe(
      (await label(run.id, 'GB')).elements.find((one) => one.element === 'ingredients')?.text,
    );
  });

  it('asks in the European Union for the countries that it is sold in, whose languages its words must stand in', async () => {
    const run = await startRun((await makeBowl()).id);
    const missing = async () => (await label(run.id, 'EU')).missing.map(({ code }) => code);
    expect(await missing()).toEqual(['label-sale-countries-missing']);
    const told = (await label(run.id, 'EU')).elements.find((one) => one.element === 'language');
    expect(told?.state).toBe('unknown');
    await changeProduct(run.productId, { saleCountries: ['IE', 'FR'] });
    expect(await missing()).toEqual(['label-words-not-in-language']);
    await changeProduct(run.productId, { saleCountries: ['IE'] });
    expect(await missing()).toEqual([]);
  });

  it('is judged by the languages that its design prints, not by what is written for others', async () => {
    const run = await startRun((await makeBowl()).id);
    const german = { name: '', functionText: 'Körperbutter', precautions: 'Nur zur äußeren Anwendung.' };
    await changeProduct(run.productId, { saleCountries: ['DE'], texts: { de: german } });
    const language = async () =>
      (await label(run.id, 'EU')).elements.find((one) => one.element === 'language');
    expect(await language()).toMatchObject({ state: 'missing', text: 'English' });
    const params = { id: run.productId };
    const { version, details } = await at.bench.get('getLabelDesign', { params });
    const body = { version, details: { ...details, languages: ['en', 'de'] as ('en' | 'de')[] } };
    await at.bench.get('saveLabelDesign', { params, body });
    expect(await language()).toMatchObject({ state: 'there', text: 'English and German' });
  });

  it('has the elements of the United States, with their names of ingredients and the warning that no report takes away', async () => {
    const run = await startRun((await makeBowl()).id);
    const before = await label(run.id, 'US');
    expect(before.missing.map(({ code }) => code)).toEqual([
      'label-precautions-missing',
      'label-responsible-missing',
      'label-contact-missing',
    ]);
    const { version, details } = await at.bench.get('getWorkshop');
    if (!details) throw new Error('the workshop has begun');
    const responsibleUs = {
      name: 'Test Agents',
      address: '5 Pier Road, Testport',
      contact: 'care@test.example',
    };
    await at.bench.get('changeWorkshop', { body: { version, details: { ...details, responsibleUs } } });
    const view = await label(run.id, 'US');
    const text = new Map(view.elements.map((one) => [one.element, one.text]));
    expect(text.get('nominal-content')).toBe('Net Wt. 1.2 oz (35 g)');
    expect(text.get('ingredients')).toContain('(Sunflower)');
    expect(text.get('ingredients')).not.toContain('Linalool');
    expect(text.get('country-of-origin')).toBe('Made in the United Kingdom');
    expect(svgOf(view, 'back')).toContain('care@test.example');
    expect(view.missing.map(({ code }) => code)).toEqual(['label-precautions-missing']);
  });

  it('lists its scent together where the product says so, with its allergens besides', async () => {
    const run = await startRun((await makeBowl()).id);
    await changeProduct(run.productId, { scentOnLabel: 'parfum' });
    const text = (await label(run.id, 'GB')).elements.find((one) => one.element === 'ingredients')?.text;
    expect(text).toBe('Butyrospermum Parkii Butter, Helianthus Annuus Seed Oil, Parfum, Linalool');
  });

  it('is printed by a person, which is written down; looking at the paper writes nothing', async () => {
    const run = await startRun((await makeBowl()).id);
    const { id } = must(await print(run.id));
    const before = countWrites();
    const [first, second] = [must(await pdf(id)), must(await pdf(id))];
    expect(Buffer.from(first.bytes).subarray(0, 5).toString()).toBe('%PDF-');
    expect(first).toEqual(second);
    expect(first.fileName).toBe('label-LB-0001-GB.pdf');
    expect(countWrites()).toBe(before);
    const { db } = at.bench.context.storage;
    const rows = await db
      .selectFrom('label_print')
      .innerJoin('entry', 'entry.id', 'label_print.entry_id')
      .select(['label_print.filling_run_id', 'market', 'copies', 'sha256', 'entry.person_id'])
      .execute();
    const sha256 = createHash('sha256').update(first.bytes).digest('hex');
    expect(rows).toEqual([
      { filling_run_id: run.id, market: 'GB', copies: 1, sha256, person_id: at.bench.people.first },
    ]);
    expect(codesOf(await pdf('no-such-print'))).toEqual(['thing-not-found']);
  });

  it('is painted once to be written down, however many copies are asked for', async () => {
    const run = await startRun((await makeBowl()).id);
    const single = must(await pdf(must(await print(run.id)).id));
    const body = { market: 'GB' as const, copies: 3 };
    const { id } = must(await at.bench.ask('printRunLabels', { params: { id: run.id }, body }));
    const row = await at.bench.context.storage.db
      .selectFrom('label_print')
      .select(['copies', 'sha256'])
      .where('entry_id', '=', id)
      .executeTakeFirst();
    expect(row).toEqual({ copies: 3, sha256: createHash('sha256').update(single.bytes).digest('hex') });
    expect(must(await pdf(id)).bytes.length).toBeGreaterThan(single.bytes.length);
  });

  it('is not printed for sale while something is missing, nor shown as printed once it is another', async () => {
    const run = await startRun((await makeBowl()).id);
    const { id } = must(await print(run.id));
    const address = async (text: string) => {
      const { version, details } = await at.bench.get('getWorkshop');
      if (!details) throw new Error('the workshop has begun');
      const responsibleGb = { name: 'Test Bench', address: text };
      await at.bench.get('changeWorkshop', { body: { version, details: { ...details, responsibleGb } } });
    };
    await address('');
    expect(codesOf(await print(run.id))).toEqual(['label-not-complete']);
    expect(codesOf(await pdf(id))).toEqual(['label-not-complete']);
    await address('9 Other Lane, Testham TT1 1TT, United Kingdom');
    expect(codesOf(await pdf(id))).toEqual(['label-changed-since']);
  });

  it('of released tins says what is in them, though the base was written anew since', async () => {
    const run = await startRun((await makeBowl()).id);
    await at.fillAll(run.id, ...FIVE);
    await at.closeRun(run.id);
    await at.bench.get('releaseRun', { params: { id: run.id }, body: { verdict: 'released', reason: '' } });
    const { id } = must(await print(run.id));
    const before = await label(run.id, 'GB');
    await reviseBase(at.bench, at.shop, ['300', '700']);
    expect(await label(run.id, 'GB')).toEqual(before);
    expect(codesOf(await print(run.id))).toEqual([]);
    expect(codesOf(await pdf(id))).toEqual([]);
  });

  it('is not printed for a run that was rejected, and the page says why', async () => {
    const run = await startRun((await makeBowl()).id);
    const { id } = must(await print(run.id));
    await at.fillAll(run.id, ...FIVE);
    await at.closeRun(run.id);
    await at.bench.get('releaseRun', {
      params: { id: run.id },
      body: { verdict: 'rejected', reason: 'Grainy' },
    });
    expect((await label(run.id, 'GB')).missing.map((one) => one.code)).toContain('label-run-rejected');
    const before = countWrites();
    const refusal = await print(run.id);
    expect(codesOf(refusal)).toEqual(['label-not-complete']);
    expect(refusal).toMatchObject({
      problems: [{ parameters: { reason: 'The filling run was rejected: its tins are not for sale.' } }],
    });
    expect(codesOf(await pdf(id))).toEqual(['label-not-complete']);
    expect(countWrites()).toBe(before);
  });

  it('says of a trial that it is not for sale', async () => {
    const run = await startRun((await makeBowl(5, 'trial')).id);
    expect(svgOf(await label(run.id, 'GB'), 'back')).toContain('Trial. Not for sale.');
  });
});
