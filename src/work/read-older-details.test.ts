import { describe, expect, it } from 'vitest';
import { readProductDetails } from './read-product-details.ts';
import { readWorkshopDetails } from './workshop-details.ts';

describe('what was written down before a question was asked', () => {
  it('leaves a product sold in no named country, its scent by name, its period after opening open', () => {
    const older = JSON.stringify({ name: 'Plain butter', markets: ['GB'], openedMonths: 12 });
    expect(readProductDetails(older)).toMatchObject({
      name: 'Plain butter',
      markets: ['GB'],
      openedMonths: 12,
      saleCountries: [],
      scentOnLabel: 'by-name',
      noOpenedPeriod: '',
    });
  });

  it('leaves a workshop without a person in the United States', () => {
    const older = JSON.stringify({ name: 'Test Bench', responsibleGb: { name: 'A', address: 'B' } });
    expect(readWorkshopDetails(older)).toMatchObject({
      responsibleGb: { name: 'A', address: 'B' },
      responsibleUs: { name: '', address: '', contact: '' },
    });
  });

  it('keeps what was said since', () => {
    const newer = JSON.stringify({
      saleCountries: ['IE'],
      scentOnLabel: 'parfum',
      noOpenedPeriod: 'single-use',
    });
    expect(readProductDetails(newer)).toMatchObject({
      saleCountries: ['IE'],
      scentOnLabel: 'parfum',
      noOpenedPeriod: 'single-use',
    });
    const person = { name: 'C', address: 'D', contact: 'E' };
    expect(readWorkshopDetails(JSON.stringify({ responsibleUs: person })).responsibleUs).toEqual(person);
  });
});
