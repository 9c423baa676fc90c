import { describe, expect, it } from 'vitest';
import { makeAll } from '../../../test/workshop/build-making.ts';
import { openMakingBench } from '../../../test/workshop/making-bench.ts';
import { textOfPdf } from '../../../test/workshop/render-pdf.ts';
import type { Paper } from '../use-case.ts';

const at = openMakingBench();
const { startBase, weigh } = at;

describe('the papers of a batch', () => {
  const paper = async (id: string) => {
    const { fileName, bytes } = (await at.bench.get('getBatchSheet', { params: { id } })) as Paper;
    return { fileName, text: textOfPdf(bytes).replace(/\s+/g, ' ') };
  };

  it('are the weighing sheet while it is being made', async () => {
    const batch = await startBase();
    const { fileName, text } = await paper(batch.id);
    expect(fileName).toBe('weighing-sheet-QB-0001.pdf');
    for (const word of ['Shea butter', 'L-0001', '520', 'Middle scale', 'Melt in a water bath'])
      expect(text).toContain(word);
  });

  it('are its record afterwards, with what was struck and what was done differently', async () => {
    const batch = await startBase();
    const params = { id: batch.id };
    const wrong = await weigh(batch, 0, '529.9');
    const entryId = wrong.ok ? wrong.value.entryId : '';
    await at.bench.get('strikeAddition', { params, body: { entryId, reason: 'Tub not tared' } });
    await weigh(batch, 0, '530.5', { deviation: { what: 'A tenth over', why: 'A lump' } });
    await makeAll(at.bench, batch.id);
    await at.bench.get('finishBatch', { params, body: { yieldGrams: '800' } });
    const { fileName, text } = await paper(batch.id);
    expect(fileName).toBe('batch-record-QB-0001.pdf');
    for (const word of [
      '530.5',
      'More than was wanted.',
      '529.9 g',
      'Tub not tared',
      'Shea butter, 10.5 g more than asked: A tenth over',
      'A lump',
      '800 g, 98.7 % of what went in',
      'Ada Quill',
      '2026-11-26 08:05',
    ])
      expect(text).toContain(word);
  });

  it('say of a batch that was given up what had gone in', async () => {
    const batch = await startBase();
    await at.bench.get('abandonBatch', { params: { id: batch.id }, body: { reason: 'Burnt' } });
    const { text } = await paper(batch.id);
    expect(text).toContain('Given up, and nothing was made of it: Burnt');
    expect(text).toContain('not weighed in');
  });
});
