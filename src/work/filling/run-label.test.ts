import { describe, expect, it } from 'vitest';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openFillingBench } from '../../../test/workshop/filling-bench.ts';
import { must, type Result } from '../../core/problem.ts';
import type { Paper } from '../use-case.ts';

const at = openFillingBench();
const { makeBowl, startRun } = at;

describe('the label of a run', () => {
  const label = (id: string, market: 'GB' | 'NI' | 'EU') =>
    at.bench.get('getRunLabel', { params: { id }, query: { market } });
  const pdf = (id: string, market = 'GB') =>
    at.bench.ask('getRunLabelPdf', { params: { id }, query: { market } }) as Promise<Result<Paper>>;

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
    expect(view.frontSvg).toContain('width="60mm"');
    expect(view.backSvg).toContain('Linalool');
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

  it('is not printed for sale while something is missing, and written down once when it is', async () => {
    const run = await startRun((await makeBowl()).id);
    const printed = await pdf(run.id);
    const again = await pdf(run.id);
    const [first, second] = [must(printed).bytes, must(again).bytes].map((bytes) => Buffer.from(bytes));
    expect(first?.subarray(0, 5).toString()).toBe('%PDF-');
    expect(first).toEqual(second);
    const rows = await at.bench.context.storage.db.selectFrom('label_print').selectAll().execute();
    expect(rows).toMatchObject([{ filling_run_id: run.id, market: 'GB', copies: 1 }]);
    const { version, details } = await at.bench.get('getWorkshop');
    if (!details) throw new Error('the workshop has begun');
    const responsibleGb = { name: 'Test Bench', address: '' };
    await at.bench.get('changeWorkshop', { body: { version, details: { ...details, responsibleGb } } });
    expect(codesOf(await pdf(run.id))).toEqual(['label-not-complete']);
  });

  it('says of a trial that it is not for sale', async () => {
    const run = await startRun((await makeBowl(5, 'trial')).id);
    expect((await label(run.id, 'GB')).backSvg).toContain('Trial. Not for sale.');
  });
});
