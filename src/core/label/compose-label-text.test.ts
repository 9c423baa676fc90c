import { describe, expect, it } from 'vitest';
import { say, sayProblem } from '../../words/index.ts';
import { must } from '../problem.ts';
import { composeLabelText } from './compose-label-text.ts';
import type { LabelElementName, LabelLaw, LabelQuestion } from './label-question.ts';
import { sayDurability } from './say-durability.ts';

const NAMES: LabelElementName[] = [
  'product-name',
  'function',
  'nominal-content',
  'e-mark',
  'ingredients',
  'minimum-durability',
  'period-after-opening',
  'precautions',
  'batch-number',
  'responsible-person',
  'country-of-origin',
  'language',
];
const law: LabelLaw = {
  elements: Object.fromEntries(
    NAMES.map((name) => [
      name,
      { source: `law on ${name}`, confidence: 'read', onContainer: true, onPackaging: name !== 'function' },
    ]),
  ),
  order: { thresholdPercent: 1, freeWhen: 'below' },
  figureHeights: [
    { nominalGramsOrMl: { over: 0, upTo: 50 }, minHeightMm: 2 },
    { nominalGramsOrMl: { over: 50, upTo: null }, minHeightMm: 3 },
  ],
  contentFromGrams: 5,
  eMarkGrams: { from: 5, upTo: 10_000 },
  euAddressInGbUntil: '2027-12-31',
};
const GB_ADDRESS = { name: 'Hollow Lane Bench', address: '3 Mill Steps\nWendle Cross WX4 7ZZ' };
const NI_ADDRESS = { name: 'Corrin Quay Agents', address: '9 Quay Terrace, Ballymoyle BT99 9ZZ' };
const EU_ADDRESS = { name: 'Corrin Quay Agents', address: '4 Harbour Lane, Ballymoyle, Ireland' };

const question = (rest: Partial<LabelQuestion> = {}): LabelQuestion => ({
  market: 'GB',
  placedOn: '2026-11-26',
  productName: 'Orange butter',
  functionText: 'Body butter',
  declaredGrams: '35',
  ingredients: [
    { name: 'Butyrospermum Parkii Butter', materialName: 'Shea butter', percent: 98 },
    { name: 'Citrus Aurantium Dulcis Peel Oil', materialName: 'Sweet orange oil', percent: 2 },
  ],
  allergens: { named: ['Limonene'], undecided: [] },
  batchNumber: 'OC-0007-1',
  durability: { mark: 'date', date: '2027-05-31', openedMonths: null },
  precautions: { text: 'For outward use only.', required: [] },
  responsible: GB_ADDRESS,
  madeIn: { country: 'GB', isNorthernIreland: false },
  printedIn: ['en'],
  ...rest,
});
const label = (rest: Partial<LabelQuestion> = {}) => must(composeLabelText(question(rest), law));
const element = (name: LabelElementName, rest: Partial<LabelQuestion> = {}) =>
  label(rest).elements.find((each) => each.element === name);

describe('the words of a label', () => {
  it('has every element of the law with its source, and nothing missing', () => {
    const { elements, missing, figureHeightMm } = label();
    expect(missing).toEqual([]);
    expect(figureHeightMm).toBe(2);
    expect(elements.map(({ element: name, text, state }) => [name, text, state])).toEqual([
      ['product-name', 'Orange butter', 'there'],
      ['function', 'Body butter', 'there'],
      ['nominal-content', '35 g', 'there'],
      ['e-mark', '', 'not-needed'],
      ['ingredients', 'Butyrospermum Parkii Butter, Citrus Aurantium Dulcis Peel Oil, Limonene', 'there'],
      ['minimum-durability', 'Best used before the end of 05/2027', 'there'],
      ['period-after-opening', '', 'not-needed'],
      ['precautions', 'For outward use only.', 'there'],
      ['batch-number', 'OC-0007-1', 'there'],
      ['responsible-person', 'Hollow Lane Bench, 3 Mill Steps, Wendle Cross WX4 7ZZ', 'there'],
      ['country-of-origin', '', 'not-needed'],
      ['language', 'English', 'there'],
    ]);
    for (const each of elements) {
      expect(each).toMatchObject({
        source: `law on ${each.element}`,
        confidence: 'read',
        onContainer: true,
        onPackaging: each.element !== 'function',
      });
    }
  });

  it('promises no day more than the product keeps', () => {
    expect(sayDurability('2027-05-31')).toBe('Best used before the end of 05/2027');
    expect(sayDurability('2027-05-30')).toBe('Best used before the end of 30/05/2027');
    expect(sayDurability('2028-02-28')).toBe('Best used before the end of 28/02/2028');
    expect(sayDurability('2028-02-29')).toBe('Best used before the end of 02/2028');
  });

  it('takes the period after opening where the product keeps long', () => {
    const long = { mark: 'period-after-opening', date: '2030-01-31', openedMonths: 12 } as const;
    expect(element('period-after-opening', { durability: long })).toMatchObject({
      text: '12 M',
      state: 'there',
    });
    expect(element('minimum-durability', { durability: long })?.state).toBe('not-needed');
    const unsaid = { ...long, openedMonths: null };
    expect(element('period-after-opening', { durability: unsaid })?.state).toBe('missing');
  });

  it('asks for the height of figures of the declared content', () => {
    expect(label({ declaredGrams: 50 }).figureHeightMm).toBe(2);
    expect(label({ declaredGrams: '50.1' }).figureHeightMm).toBe(3);
  });

  it('does not ask for a content below five grams', () => {
    expect(element('nominal-content', { declaredGrams: 5 })?.required).toBe(true);
    expect(element('nominal-content', { declaredGrams: '4.99' })).toMatchObject({
      required: false,
      state: 'there',
    });
  });

  it('wants a responsible person where the product is sold', () => {
    const state = (rest: Partial<LabelQuestion>) => element('responsible-person', rest)?.state;
    expect(state({ market: 'GB', responsible: NI_ADDRESS })).toBe('there');
    expect(state({ market: 'NI', responsible: NI_ADDRESS })).toBe('there');
    expect(state({ market: 'EU', responsible: NI_ADDRESS })).toBe('there');
    expect(state({ market: 'EU', responsible: EU_ADDRESS })).toBe('there');
    expect(state({ market: 'NI', responsible: GB_ADDRESS })).toBe('missing');
    expect(state({ market: 'EU', responsible: GB_ADDRESS })).toBe('missing');
    expect(state({ responsible: { name: ' ', address: GB_ADDRESS.address } })).toBe('missing');
  });

  it('takes the address of the European Union in Great Britain until the end of 2027', () => {
    const gb = (placedOn: string) => element('responsible-person', { responsible: EU_ADDRESS, placedOn });
    expect(gb('2027-12-31')).toMatchObject({ state: 'there', reason: { code: 'label-address-taken-until' } });
    expect(gb('2028-01-01')?.state).toBe('missing');
  });

  it('names the country of origin of what is imported', () => {
    const origin = (market: LabelQuestion['market'], country: string, isNorthernIreland = false) =>
      element('country-of-origin', { market, madeIn: { country, isNorthernIreland } })?.text;
    expect(origin('GB', 'GB')).toBe('');
    expect(origin('GB', 'IE')).toBe('Made in Ireland');
    expect(origin('NI', 'GB')).toBe('Made in the United Kingdom');
    expect(origin('NI', 'GB', true)).toBe('');
    expect(origin('EU', 'IE')).toBe('');
    expect(origin('EU', 'NO')).toBe('Made in Norway');
    expect(element('country-of-origin', { madeIn: { country: '', isNorthernIreland: false } })?.state).toBe(
      'missing',
    );
  });

  it('does not print a list that lacks a name or hides an open question', () => {
    const [shea, orange] = question().ingredients;
    if (!shea || !orange) throw new Error('two ingredients');
    expect(element('ingredients', { ingredients: [shea, { ...orange, name: '' }] })).toMatchObject({
      state: 'missing',
      text: 'Butyrospermum Parkii Butter, Limonene',
      reason: { code: 'label-name-unknown', parameters: { materials: 'Sweet orange oil' } },
    });
    const undecided = { named: [], undecided: ['Citral'] };
    expect(element('ingredients', { allergens: undecided })?.state).toBe('missing');
    const blend = { ...shea, name: 'Helianthus Annuus Seed Oil, Tocopherol', materialName: 'Vitamin E' };
    expect(element('ingredients', { ingredients: [shea, blend] })).toMatchObject({
      state: 'unknown',
      reason: { code: 'label-name-of-several', parameters: { materials: 'Vitamin E' } },
    });
    expect(element('ingredients', { ingredients: [shea, { ...blend, name: 'Tocopherol' }] })).toMatchObject({
      state: 'there',
    });
    expect(element('ingredients', { ingredients: [{ ...shea, name: '' }] })).toMatchObject({
      text: '',
      state: 'missing',
    });
  });

  it('wants each precaution that a rule asks for, however it is set', () => {
    const required = ['Avoid  contact with eyes'];
    const state = (text: string) => element('precautions', { precautions: { text, required } })?.state;
    expect(state('For outward use. AVOID contact\nwith eyes.')).toBe('there');
    expect(state('For outward use.')).toBe('missing');
    expect(element('precautions', { precautions: { text: '', required: [] } })?.state).toBe('not-needed');
  });

  it('says what is missing, by name, in words', () => {
    const { missing, elements } = label({
      market: 'EU',
      functionText: ' ',
      ingredients: [],
      batchNumber: null,
      durability: null,
      precautions: { text: '', required: ['Avoid contact with eyes'] },
      madeIn: { country: '', isNorthernIreland: false },
    });
    expect(missing.map(({ where }) => where)).toEqual([
      'function',
      'ingredients',
      'minimum-durability',
      'precautions',
      'batch-number',
      'responsible-person',
      'country-of-origin',
      'language',
    ]);
    for (const each of missing) {
      expect(sayProblem(each).says).not.toMatch(/^There are no words/);
      expect(each.source).toBe(`law on ${each.where}`);
    }
    for (const { reason } of elements) if (reason) expect(say(reason)).not.toMatch(/^There are no words/);
  });

  it('does not need a function that is plain to see', () => {
    expect(element('function', { functionText: '', isFunctionClear: true })?.state).toBe('not-needed');
  });

  it('passes on a declared content or a percentage that cannot stand', () => {
    expect(composeLabelText(question({ declaredGrams: 0 }), law)).toMatchObject({
      problems: [{ code: 'value-not-above', where: 'declaredGrams' }],
    });
    const [shea] = question().ingredients;
    const ingredients = shea ? [{ ...shea, percent: 101 }] : [];
    expect(composeLabelText(question({ ingredients }), law)).toMatchObject({
      problems: [{ code: 'percent-out-of-range' }],
    });
  });
});
