import { describe, expect, it } from 'vitest';
import { stock } from '../../../contract/index.ts';
import { findGaps } from './find-gaps.ts';
import { draftOfMaterial, EMPTY_MATERIAL, readMaterialDraft } from './material-draft.ts';

const oil = {
  ...EMPTY_MATERIAL,
  name: 'Bergamot oil',
  inciEu: 'Citrus Aurantium Bergamia Peel Oil',
  cas: ['8007-75-8', '68648-33-9'],
  role: 'fragrance' as const,
  origins: [],
  constituents: [
    {
      name: 'Linalool',
      cas: '78-70-6',
      leastPercent: '5',
      typicalPercent: '10.5',
      mostPercent: '18',
      source: 'paper of lot 7',
      confidence: 'supplier' as const,
    },
  ],
  constituentsAre: 'complete' as const,
  constituentsPaper: 'paper of lot 7',
  supplierMostPercent: '2',
  supplierPaper: 'paper of lot 7',
  packSize: '100',
  packPrice: '12.4',
  leadDays: 4,
};

describe('a material as a draft', () => {
  it('comes back as it was when nothing was typed', () => {
    expect(readMaterialDraft(draftOfMaterial(oil))).toEqual({ ok: true, value: oil });
  });

  it('is what the contract takes', () => {
    const read = readMaterialDraft({ ...draftOfMaterial(oil), packPrice: '1 012.40', cas: ' 8007-75-8 ' });
    expect(read.ok && stock.materialDetails.safeParse(read.value).success).toBe(true);
    expect(read).toMatchObject({ value: { packPrice: '1012.4', cas: ['8007-75-8'] } });
  });

  it('tells nothing said from none of them', () => {
    const unsaid = readMaterialDraft({ ...draftOfMaterial(oil), origins: null, reorderBelow: '' });
    expect(unsaid).toMatchObject({ value: { origins: null, reorderBelow: null } });
    expect(readMaterialDraft(draftOfMaterial(oil))).toMatchObject({ value: { origins: [] } });
  });

  it('leaves out what belongs to the other kind', () => {
    const read = readMaterialDraft({
      ...draftOfMaterial(oil),
      kind: 'packaging',
      packagingKind: 'tin',
      tareGrams: '21.4',
    });
    expect(read).toMatchObject({
      value: {
        packagingKind: 'tin',
        tareGrams: '21.4',
        inciEu: '',
        role: null,
        constituents: [],
        constituentsAre: null,
        supplierMostPercent: null,
      },
    });
  });

  it('asks for a name and whole days at once', () => {
    const read = readMaterialDraft({ ...draftOfMaterial(EMPTY_MATERIAL), leadDays: '2.5' });
    expect(read).toMatchObject({ problems: [{ where: 'details.name' }, { where: 'details.leadDays' }] });
  });
});

describe('findGaps', () => {
  it('finds none where everything was said, even that it comes from none of the listed things', () => {
    expect(findGaps(oil)).toEqual([]);
  });

  it('tells what is known in part from what nobody has said', () => {
    expect(findGaps({ ...oil, constituentsAre: 'partial' })).toHaveLength(1);
    expect(findGaps({ ...oil, constituentsAre: null })).toHaveLength(1);
    expect(findGaps({ ...oil, constituents: [] })).toEqual([]);
  });

  it('names each gap that the label, the check or the cost will ask for', () => {
    expect(findGaps({ ...EMPTY_MATERIAL, role: 'fragrance' })).toHaveLength(4);
    expect(
      findGaps({ ...EMPTY_MATERIAL, kind: 'packaging', packagingKind: 'lid', packPrice: '0.2' }),
    ).toEqual([]);
  });
});
