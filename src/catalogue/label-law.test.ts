import { describe, expect, it } from 'vitest';
import {
  composeLabelText,
  type LabelElementName,
  type LabelMarket,
  type LabelQuestion,
} from '../core/label/index.ts';
import { must } from '../core/problem.ts';
import { say, sayProblem } from '../words/index.ts';
import { labelLawOf, saleCountries } from './label-law.ts';

const MARKETS = ['GB', 'NI', 'EU', 'US'] as const satisfies LabelMarket[];

const question = (rest: Partial<LabelQuestion> = {}): LabelQuestion => ({
  market: 'US',
  placedOn: '2026-11-26',
  productName: 'Orange butter',
  functionText: 'Body butter',
  declaredGrams: '35',
  ingredients: [
    { name: 'Butyrospermum Parkii (Shea) Butter', materialName: 'Shea butter', percent: 97 },
    { name: 'Cocos Nucifera (Coconut) Oil', materialName: 'Coconut oil', percent: 1 },
    { name: 'Mica', materialName: 'Mica', percent: 1, role: 'colourant' },
    { name: 'Tocopherol', materialName: 'Vitamin E', percent: 0.4 },
    {
      name: 'Citrus Aurantium Dulcis (Orange) Peel Oil',
      materialName: 'Sweet orange oil',
      percent: 0.6,
      role: 'fragrance',
    },
  ],
  allergens: { named: [], undecided: [] },
  batchNumber: 'OC-0007-1',
  durability: { mark: 'date', date: '2027-05-30', openedMonths: null },
  precautions: { text: '', required: [] },
  responsible: {
    name: 'Hollow Lane Bench',
    address: '3 Mill Steps\nWendle Cross, OH 44999',
    contact: '',
  },
  madeIn: { country: 'US', isNorthernIreland: false },
  printedIn: ['en'],
  ...rest,
});

const compose = (rest: Partial<LabelQuestion> = {}) => {
  const asked = question(rest);
  return must(composeLabelText(asked, labelLawOf(asked.market)));
};
const element = (name: LabelElementName, rest: Partial<LabelQuestion> = {}) =>
  compose(rest).elements.find((each) => each.element === name);

const GB_BENCH = { name: 'Hollow Lane Bench', address: '3 Mill Steps\nWendle Cross WX4 7ZZ' };
const IRISH = { name: 'Corrin Quay Agents', address: '4 Harbour Lane, Ballymoyle, Ireland' };

describe('a label for the United States', () => {
  it('has the elements of 21 CFR 701 and 740 and of MoCRA, each with its source', () => {
    const { elements, missing } = compose();
    expect(missing).toEqual([]);
    expect(elements.map((each) => [each.element, each.text, each.state, each.required])).toEqual([
      ['product-name', 'Orange butter', 'there', false],
      ['function', 'Body butter', 'there', true],
      ['nominal-content', 'Net Wt. 1.2 oz (35 g)', 'there', true],
      [
        'ingredients',
        'Butyrospermum Parkii (Shea) Butter, Cocos Nucifera (Coconut) Oil, Citrus Aurantium Dulcis (Orange) Peel Oil, Tocopherol, Mica',
        'there',
        true,
      ],
      ['minimum-durability', 'Best used before the end of 2027-05-30', 'there', false],
      ['period-after-opening', '', 'not-needed', false],
      ['precautions', '', 'not-needed', false],
      ['batch-number', 'OC-0007-1', 'there', false],
      ['responsible-person', 'Hollow Lane Bench, 3 Mill Steps, Wendle Cross, OH 44999', 'there', true],
      ['contact', '', 'not-needed', false],
      ['country-of-origin', '', 'not-needed', false],
      ['language', 'English', 'there', true],
    ]);
    expect(element('function')?.source).toContain('21 CFR 701.11');
    expect(element('nominal-content')?.source).toContain('21 CFR 701.13');
    expect(element('contact')?.source).toContain('MoCRA');
    expect(element('precautions')).toMatchObject({ confidence: 'memory' });
  });

  it('goes by the area of its face for the height of the figures', () => {
    // 5 square inches are 3225.8 square millimetres.
    expect(compose({ panelSquareMm: 3225.8 }).figureHeightMm).toBe(1.5875);
    expect(compose({ panelSquareMm: 3226 }).figureHeightMm).toBe(3.175);
    const asked = question({ market: 'GB', panelSquareMm: 9000 });
    expect(must(composeLabelText(asked, labelLawOf('GB'))).figureHeightMm).toBe(2);
  });

  it('asks for a contact for reports of harm where the address is elsewhere', () => {
    const abroad = (contact: string) => element('contact', { responsible: { ...GB_BENCH, contact } });
    expect(abroad('')?.state).toBe('missing');
    expect(abroad('www.example.com/tell-us')).toMatchObject({
      state: 'there',
      text: 'www.example.com/tell-us',
    });
    expect(element('responsible-person', { responsible: GB_BENCH })?.state).toBe('there');
  });

  it('asks for the warning of 740.10 where no report covers it', () => {
    const warning = 'Warning—The safety of this product has not been determined.';
    const state = (text: string) =>
      element('precautions', { isSafetySubstantiated: false, precautions: { text, required: [] } });
    expect(state('')).toMatchObject({ state: 'missing', reason: { parameters: { lacking: warning } } });
    expect(state(`For outward use. ${warning.replace('—', '--')}`)?.state).toBe('there');
  });

  it('wants the statement of identity even where the look is clear, and marks what is imported', () => {
    expect(element('function', { functionText: '', isFunctionClear: true })?.state).toBe('missing');
    const madeIn = { country: 'GB', isNorthernIreland: false };
    expect(element('country-of-origin', { madeIn })?.text).toBe('Made in the United Kingdom');
  });

  it('orders exactly one per cent as free, and lists a scent together as Fragrance', () => {
    expect(compose().ingredientList.indexOf('Cocos Nucifera (Coconut) Oil')).toBe(1);
    expect(element('ingredients', { isScentTogether: true })?.text).toBe(
      'Butyrospermum Parkii (Shea) Butter, Cocos Nucifera (Coconut) Oil, Fragrance, Tocopherol, Mica',
    );
  });

  it('needs no date and no batch number by federal law', () => {
    const none = { durability: null, batchNumber: null };
    expect(compose(none).missing).toEqual([]);
    const long = {
      durability: { mark: 'period-after-opening', date: '2030-05-31', openedMonths: 12 },
    } as const;
    expect(element('period-after-opening', long)).toMatchObject({ text: '12 M', required: false });
  });
});

describe('a label for Great Britain, Northern Ireland and the European Union', () => {
  const european = (market: LabelMarket, rest: Partial<LabelQuestion> = {}) => ({
    market,
    responsible: market === 'GB' ? GB_BENCH : IRISH,
    madeIn: { country: market === 'GB' ? 'GB' : 'IE', isNorthernIreland: false },
    ...rest,
  });

  it('says of each element where it must stand', () => {
    for (const market of ['GB', 'NI', 'EU'] as const) {
      const places = compose(european(market)).elements.map((each) => [
        each.element,
        each.onContainer,
        each.onPackaging,
      ]);
      const both = places.filter(([, container, packaging]) => container && packaging).map(([name]) => name);
      expect(both).toEqual([
        'function',
        'nominal-content',
        'e-mark',
        'minimum-durability',
        'period-after-opening',
        'precautions',
        'batch-number',
        'responsible-person',
        'country-of-origin',
        'language',
      ]);
      expect(places).toContainEqual(['ingredients', false, true]);
    }
  });

  it('lets the e-mark stand from 5 g to 10 kg where tins are filled the average way', () => {
    const mark = (declaredGrams: string, fillBasis: 'average' | 'minimum' = 'average') =>
      element('e-mark', european('GB', { hasEMark: true, declaredGrams, fillBasis }));
    expect(mark('5')).toMatchObject({ state: 'there', text: 'e', sign: 'e-mark', required: false });
    expect(mark('4.99')?.reason?.code).toBe('label-e-mark-outside');
    expect(mark('10000')?.state).toBe('there');
    expect(mark('10000.01')?.reason?.code).toBe('label-e-mark-outside');
    expect(mark('50', 'minimum')?.reason?.code).toBe('label-e-mark-not-average');
    expect(element('e-mark', european('GB'))).toMatchObject({ state: 'not-needed', required: false });
    expect(element('e-mark', { market: 'US' })).toBeUndefined();
  });

  it('asks for the language of each member state that it is sold in', () => {
    const sold = (countries: readonly string[], printedIn = ['en']) =>
      element(
        'language',
        european('EU', {
          saleCountries: saleCountries.filter(({ country }) => countries.includes(country)),
          printedIn,
        }),
      );
    const untold = sold([]);
    expect(untold).toMatchObject({ state: 'unknown', reason: { code: 'label-sale-countries-missing' } });
    expect(sold(['IE'], [])).toMatchObject({
      state: 'unknown',
      reason: { code: 'label-languages-not-told' },
    });
    const problems = compose({ ...european('EU'), saleCountries: [] }).missing.map(({ code }) => code);
    expect(problems).toContain('label-sale-countries-missing');
    expect(sold(['IE', 'MT'])).toMatchObject({ state: 'there', text: 'English' });
    expect(sold(['IE', 'DE'])?.reason).toMatchObject({ parameters: { countries: 'Germany (German)' } });
    expect(sold(['IE', 'DE'], ['en', 'de'])?.state).toBe('there');
    expect(sold(['BE'], ['fr'])?.state).toBe('missing');
    expect(sold(['BE'], ['fr', 'nl'])?.state).toBe('there');
    expect(sold(['LU'], ['de'])?.state).toBe('there');
    expect(element('language', european('NI'))?.state).toBe('there');
    expect(element('language', european('GB', { printedIn: ['fr'] }))?.state).toBe('missing');
  });

  it('takes the words or the hourglass before the date', () => {
    expect(element('minimum-durability', european('GB', { durabilitySign: 'hourglass' }))).toMatchObject({
      text: '30/05/2027',
      sign: 'hourglass',
    });
  });

  it('needs no period after opening where it is used up, cannot be opened or does not spoil', () => {
    const durability = { mark: 'period-after-opening', date: '2030-05-31', openedMonths: null } as const;
    expect(element('period-after-opening', european('GB', { durability }))?.state).toBe('missing');
    for (const noOpenedPeriod of ['single-use', 'cannot-be-opened', 'does-not-spoil'] as const) {
      const judged = element('period-after-opening', european('GB', { durability, noOpenedPeriod }));
      expect(judged?.state).toBe('not-needed');
      expect(judged?.reason && say(judged.reason)).toContain('no period after opening is needed');
    }
    // The date stands all the same where it keeps thirty months or less.
    const asked = european('GB', { noOpenedPeriod: 'single-use' });
    expect(element('minimum-durability', asked)?.state).toBe('there');
  });

  it('lists a scent together as Parfum with its allergens besides, nanomaterials marked, colourants last', () => {
    const allergens = { named: ['Limonene', 'Citrus Aurantium Peel Oil'], undecided: [] };
    const ingredients = question().ingredients.map((each) => ({ ...each, isNano: each.name === 'Mica' }));
    const asked = european('EU', { allergens, ingredients, isScentTogether: true });
    expect(compose(asked).ingredientList).toEqual([
      'Butyrospermum Parkii (Shea) Butter',
      'Cocos Nucifera (Coconut) Oil',
      'Parfum',
      'Tocopherol',
      'Limonene',
      'Citrus Aurantium Peel Oil',
      'Mica (nano)',
    ]);
  });

  it('needs no name of its own for an oil that stands under Parfum', () => {
    const ingredients = question().ingredients.map((each) =>
      each.role === 'fragrance' ? { ...each, name: '' } : each,
    );
    expect(element('ingredients', european('EU', { ingredients }))?.state).toBe('missing');
    expect(element('ingredients', european('EU', { ingredients, isScentTogether: true }))?.state).toBe(
      'there',
    );
  });
});

it('has words for everything that is missing or not needed', () => {
  for (const market of MARKETS) {
    const bare: Partial<LabelQuestion> = {
      market,
      functionText: '',
      declaredGrams: market === 'US' ? '0.2' : '20000',
      hasEMark: true,
      ingredients: [],
      durability: { mark: 'period-after-opening', date: '2030-05-31', openedMonths: null },
      batchNumber: null,
      responsible: { name: '', address: '' },
      madeIn: { country: '', isNorthernIreland: false },
      isSafetySubstantiated: false,
      printedIn: ['fr'],
    };
    const { missing, elements } = compose(bare);
    expect(missing.length).toBeGreaterThan(5);
    for (const each of missing) expect(sayProblem(each).says).not.toMatch(/There are no words/);
    for (const { reason } of elements) if (reason) expect(say(reason)).not.toMatch(/There are no words/);
  }
});

describe('who is named on the label, and how they are reached', () => {
  const named = (market: LabelMarket, address: string, placedOn = '2026-11-26') =>
    element('responsible-person', { market, placedOn, responsible: { name: 'Test Agents', address } });

  it('is somebody in the Union or Northern Ireland for both of them', () => {
    for (const market of ['EU', 'NI'] as const) {
      expect(named(market, '4 Harbour Lane, Ballymoyle, Ireland')?.state).toBe('there');
      expect(named(market, '9 Quay Terrace, Ballymoyle bt99 9zz')?.state).toBe('there');
      expect(named(market, '1 Mill Lane, Testham, tt1 2ab')?.state).toBe('missing');
      expect(named(market, '12 Main St, Akron, OH 44999, USA')?.state).toBe('missing');
      expect(named(market, '4 Harbour Lane, Ballymoyle')).toMatchObject({
        state: 'unknown',
        reason: { code: 'label-responsible-where' },
      });
    }
  });

  it('is for Great Britain somebody there, or until the end of 2027 in the Union, and nobody elsewhere', () => {
    const irish = '4 Harbour Lane, Ballymoyle, Ireland';
    expect(named('GB', irish, '2027-12-31')?.state).toBe('there');
    expect(named('GB', irish, '2028-01-01')?.state).toBe('missing');
    expect(named('GB', '12 Main St, Akron, OH 44999, USA')?.state).toBe('missing');
    expect(named('GB', '4 Harbour Lane, Ballymoyle')?.state).toBe('unknown');
  });

  it.each([
    ['harm@example.org', 'there'],
    ['www.example.org/contact', 'there'],
    ['(216) 555-0142', 'there'],
    ['+1 216 555 0142', 'there'],
    ['3 Mill Steps, Wendle Cross, OH 44999', 'there'],
    ['01392 555010', 'missing'],
    ['+44 1392 555010', 'missing'],
    ['216 555 014', 'missing'],
    ['x', 'missing'],
  ])('is reached in the United States by %s: %s', (contact, state) => {
    const responsible = { name: 'Test Bench', address: '1 Mill Lane, Testham TT1 1TT', contact };
    expect(element('contact', { responsible })?.state).toBe(state);
  });
});
