import { describe, expect, it } from 'vitest';
import type { certificates } from '../contract/index.ts';
import { joinPapers, type LotPaper } from './join-papers.ts';

type Details = certificates.CertificateDetails;

/** Invented papers. */
const paper = (id: string, details: Partial<Details>): LotPaper => ({
  id,
  reference: `paper ${id}`,
  datedOn: null,
  details: {
    constituents: [],
    isComplete: false,
    peroxide: null,
    ifra: [],
    remark: '',
    insteadOf: null,
    ...details,
  },
});
const has = (name: string, percent: string, cas: string | null = null) => ({
  name,
  cas,
  leastPercent: percent,
  typicalPercent: percent,
  mostPercent: percent,
});
const listed = (papers: readonly LotPaper[]) =>
  joinPapers(papers)?.constituents.map(({ name, mostPercent, paper: of }) => [name, mostPercent, of]);
const allows = (category: Details['ifra'][number]['category'], mostPercent: string) => ({
  category,
  edition: '51',
  mostPercent,
});
const measured = (mmolPerLitre: string, measuredOn: string | null) => ({ mmolPerLitre, measuredOn });

describe('what counts of several papers on a lot', () => {
  it('keeps the analysis when a conformity statement comes after it, and the other way round', () => {
    const analysis = paper('1', { constituents: [has('Methyl Eugenol', '0.5')] });
    const statement = paper('2', { ifra: [allows('5A', '2.1')] });
    const joined = joinPapers([analysis, statement]);
    expect(joined).toMatchObject({ constituents: [{ paper: 'paper 1' }], ifra: [{ paper: 'paper 2' }] });
    expect(joinPapers([statement, analysis])).toEqual(joined);
  });

  it('takes the newer figure of the same constituent, by name or CAS number, and keeps the others', () => {
    const first = paper('1', { constituents: [has('Linalool', '30', '78-70-6'), has('Camphor', '1')] });
    const second = paper('2', { constituents: [has('linalol', '28', '78-70-6')] });
    expect(listed([first, second])).toEqual([
      ['Camphor', '1', 'paper 1'],
      ['linalol', '28', 'paper 2'],
    ]);
  });

  it('lets a list of everything take the place of all lists before it, and a part stand beside one after it', () => {
    const part = paper('1', { constituents: [has('Linalool', '30')] });
    const whole = paper('2', { constituents: [has('Limonene', '2')], isComplete: true });
    const later = paper('3', { constituents: [has('Camphor', '1')] });
    expect(listed([part, whole])).toEqual([['Limonene', '2', 'paper 2']]);
    expect(joinPapers([part, whole, later])).toMatchObject({ isComplete: true });
    expect(listed([part, whole, later])).toEqual([
      ['Limonene', '2', 'paper 2'],
      ['Camphor', '1', 'paper 3'],
    ]);
    expect(listed([part, paper('2', { isComplete: true })])).toEqual([]);
  });

  it('takes the peroxide value that was measured later, whichever was entered first', () => {
    const old = paper('1', { peroxide: measured('4', '2026-03-01') });
    const young = paper('2', { peroxide: measured('9', '2026-09-01') });
    for (const papers of [
      [old, young],
      [young, old],
    ])
      expect(joinPapers(papers)?.peroxide).toMatchObject({ mmolPerLitre: '9', paper: 'paper 2' });
    const undated = paper('3', { peroxide: measured('6', null) });
    expect(joinPapers([young, undated])?.peroxide).toMatchObject({ mmolPerLitre: '6' });
  });

  it('takes the newer statement for a category, and leaves the other categories', () => {
    const first = paper('1', { ifra: [allows('4', '1'), allows('5A', '2')] });
    const second = paper('2', { ifra: [allows('5A', '3')] });
    expect(
      joinPapers([first, second])?.ifra.map(({ category, mostPercent }) => [category, mostPercent]),
    ).toEqual([
      ['4', '1'],
      ['5A', '3'],
    ]);
  });

  it('takes away only what another paper was entered instead of, a corrected correction too', () => {
    const wrong = paper('1', { constituents: [has('Limonene', '96')] });
    const fixed = paper('2', { constituents: [has('Linalool', '96')], insteadOf: '1' });
    const again = paper('3', { constituents: [has('Linalool', '69')], insteadOf: '2' });
    expect(listed([wrong, fixed])).toEqual([['Linalool', '96', 'paper 2']]);
    expect(listed([wrong, fixed, again])).toEqual([['Linalool', '69', 'paper 3']]);
  });

  it('is nothing where there is no paper', () => {
    expect(joinPapers([])).toBeUndefined();
  });
});
