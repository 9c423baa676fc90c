import { describe, expect, it } from 'vitest';
import type { KnownReport, OpenedRevision, ReportDetails } from './checked.ts';
import { findReport } from './find-report.ts';

/** Invented, as far as the choice looks at it. */
const opened = {
  formula: { id: 'butter', name: 'Butter', kind: 'mixture' },
  details: { use: 'leave-on', category: '5A', bodyPart: '', productType: '', alsoUsedAs: [] },
} as unknown as OpenedRevision;
const report = (reference: string, more: Partial<ReportDetails>): KnownReport => ({
  row: { id: reference },
  details: {
    reference,
    assessor: 'A. N. Assessor',
    signedOn: '2026-01-01',
    reviewBy: '2028-01-01',
    baseFormulaId: null,
    formulaIds: ['butter'],
    productIds: [],
    markets: ['GB'],
    uses: ['leave-on'],
    ranges: [],
    ...more,
  },
  materialNames: new Map(),
});
const found = (reports: readonly KnownReport[], products: readonly string[] = []) =>
  findReport(
    reports,
    { opened, today: '2026-11-26', products: products.map((id) => ({ id, name: id })) },
    'GB',
  )?.details.reference;

describe('the report that is asked', () => {
  it('is the newest that is signed, on the day of signing already and not the day before', () => {
    const old = report('old', {});
    expect(found([old, report('today', { signedOn: '2026-11-26' })])).toBe('today');
    expect(found([old, report('tomorrow', { signedOn: '2026-11-27' })])).toBe('old');
  });

  it('is one that names the product, or one that names none', () => {
    const named = report('named', { productIds: ['small'], signedOn: '2026-05-01' });
    const open = report('open', {});
    expect(found([named, open], ['small'])).toBe('named');
    expect(found([named, open], ['large'])).toBe('open');
    expect(found([named], ['large'])).toBeUndefined();
    expect(found([named], ['large', 'small'])).toBe('named');
  });

  it('is none for another market or another use', () => {
    expect(found([report('eu', { markets: ['EU'] })])).toBeUndefined();
    expect(found([report('rinse', { uses: ['rinse-off'] })])).toBeUndefined();
  });
});
