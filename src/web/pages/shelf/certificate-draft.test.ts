import { describe, expect, it } from 'vitest';
import { certificates } from '../../../contract/index.ts';
import { bodyOf, draftOf, emptyCertificate, emptyConstituent, emptyStatement } from './certificate-draft.ts';

describe('a certificate as it is typed', () => {
  it('is what the contract takes, rows without a word left out', () => {
    const body = bodyOf(
      {
        ...emptyCertificate(),
        reference: 'L24-0311',
        constituents: [{ ...emptyConstituent(), name: 'Linalool', measured: '28.5' }, emptyConstituent()],
        peroxide: '4',
        statements: [{ ...emptyStatement(), most: '2.1' }],
      },
      null,
      null,
    );
    expect(certificates.certificateInput.safeParse(body.details).success).toBe(true);
    expect(body.details.constituents).toHaveLength(1);
    expect(body.details.peroxide).toEqual({ mmolPerLitre: '4', measuredOn: null });
    expect(body.datedOn).toBeNull();
  });

  it('is the same paper again where it is only opened to be corrected', () => {
    const details = {
      constituents: [
        { name: 'Linalool', cas: '78-70-6', leastPercent: '25', typicalPercent: '27.5', mostPercent: '30' },
      ],
      isComplete: true,
      peroxide: { mmolPerLitre: '4', measuredOn: null },
      ifra: [{ category: '5A' as const, edition: '51', mostPercent: '2.1' }],
      remark: 'Read twice.',
      insteadOf: null,
    };
    const paper = { id: 'one', reference: 'L24-0311', datedOn: '2026-11-03', details };
    const draft = draftOf({ ...paper, file: null, by: '', at: '', isReplaced: false });
    expect(bodyOf(draft, null, 'one')).toMatchObject({
      reference: 'L24-0311',
      datedOn: '2026-11-03',
      details: { ...details, insteadOf: 'one' },
    });
  });

  it('says no peroxide value where none is typed', () => {
    expect(bodyOf(emptyCertificate(), null, null).details).toMatchObject({
      peroxide: null,
      constituents: [],
    });
  });
});
