import { describe, expect, it } from 'vitest';
import { certificates } from '../../../contract/index.ts';
import { bodyOf, emptyCertificate, emptyConstituent, emptyStatement } from './certificate-draft.ts';

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
    );
    expect(certificates.certificateInput.safeParse(body.details).success).toBe(true);
    expect(body.details.constituents).toHaveLength(1);
    expect(body.details.peroxide).toEqual({ mmolPerLitre: '4', measuredOn: null });
    expect(body.datedOn).toBeNull();
  });

  it('says no peroxide value where none is typed', () => {
    expect(bodyOf(emptyCertificate(), null).details).toMatchObject({ peroxide: null, constituents: [] });
  });
});
