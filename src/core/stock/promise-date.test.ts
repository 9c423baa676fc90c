import { describe, expect, it } from 'vitest';
import { must } from '../problem.ts';
import { promiseDate } from './promise-date.ts';
import type { PromiseItem, PromiseLot, PromiseQuestion } from './promise-question.ts';

const lot = (name: string, quantity: string, rest: Partial<PromiseLot> = {}): PromiseLot => ({
  lot: name,
  quantity,
  bestBefore: '2027-06-30',
  received: '2026-01-10',
  status: 'released',
  firm: null,
  awaitsRelease: false,
  ...rest,
});
const bought = (
  itemId: string,
  unit: 'g' | 'pieces',
  leadDays: number | null,
  ...lots: PromiseLot[]
): PromiseItem => ({
  itemId,
  name: `The ${itemId}`,
  unit,
  lots,
  making: null,
  leadDays,
});
const shea = bought('shea', 'g', 4, lot('SH-1', '5000'));
const orange = bought('orange', 'g', 3, lot('OR-1', '50'));
const tin = bought('tin', 'pieces', 5, lot('TN-1', '20'));
const base: PromiseItem = {
  itemId: 'base',
  name: 'Quiet base',
  unit: 'g',
  lots: [],
  leadDays: null,
  making: {
    parts: [{ itemId: 'shea', amount: 1 }],
    minutes: 60,
    settingHours: { least: 24, most: 48 },
  },
};
const mixture: PromiseItem = {
  itemId: 'mixture',
  name: 'Orange mixture',
  unit: 'g',
  lots: [],
  leadDays: null,
  making: {
    parts: [
      { itemId: 'base', amount: '0.98' },
      { itemId: 'orange', amount: '0.02' },
    ],
    minutes: 30,
    settingHours: null,
  },
};
const tins: PromiseItem = {
  itemId: 'butter',
  name: 'Orange butter',
  unit: 'pieces',
  lots: [],
  leadDays: null,
  making: {
    parts: [
      { itemId: 'mixture', amount: '40', extra: '10' },
      { itemId: 'tin', amount: 1 },
    ],
    minutes: 10,
    minutesForEach: 4,
    settingHours: null,
  },
};

/** Thursday 26 November 2026, eight in the morning. */
const ask = (changes: Partial<PromiseItem>[] = [], rest: Partial<PromiseQuestion> = {}): PromiseQuestion => ({
  now: '2026-11-26T08:00:00Z',
  timeZone: 'Europe/London',
  wantedBy: '2026-11-30',
  workday: { from: '08:00', to: '18:00' },
  needs: [{ itemId: 'butter', quantity: 5 }],
  items: [tins, mixture, base, shea, orange, tin].map((item) => ({
    ...item,
    ...changes.find(({ itemId }) => itemId === item.itemId),
  })),
  ...rest,
});
const answer = (...given: Parameters<typeof ask>) => must(promiseDate(ask(...given)));
const codes = (steps: readonly { readonly what: { readonly code: string } }[]) =>
  steps.map(({ what }) => what.code);

describe('the answer to an order', () => {
  it('goes today where the tins are on the shelf', () => {
    const told = answer([{ itemId: 'butter', lots: [lot('T-1', '7')] }]);
    expect(told).toMatchObject({
      canGoOutBy: true,
      answer: 'yes',
      earliest: { from: '2026-11-26', to: '2026-11-26', dependsOnSupplier: false },
      shortOf: [],
      steps: [],
    });
    expect(told.reasons).toEqual([
      {
        code: 'promise-on-shelf',
        parameters: { item: 'Orange butter', unit: 'pieces', need: '5', onShelf: '7' },
      },
    ]);
  });

  it('makes base, mixture and tins one after another, and judges on the longest setting time', () => {
    const told = answer();
    // Base 08:00-09:00, firm 24 to 48 h later, mixture 30 min, 5 tins 30 min.
    expect(told.steps).toEqual([
      {
        what: { code: 'promise-step-make', parameters: { item: 'Quiet base', unit: 'g', amount: '205.8' } },
        itemId: 'base',
        lot: null,
        from: '2026-11-26T08:00:00Z',
        to: '2026-11-26T09:00:00Z',
      },
      {
        what: { code: 'promise-step-set', parameters: { item: 'Quiet base', unit: 'g' } },
        itemId: 'base',
        lot: null,
        from: '2026-11-27T09:00:00Z',
        to: '2026-11-28T09:00:00Z',
      },
      {
        what: { code: 'promise-step-make', parameters: { item: 'Orange mixture', unit: 'g', amount: '210' } },
        itemId: 'mixture',
        lot: null,
        from: '2026-11-27T09:00:00Z',
        to: '2026-11-28T09:30:00Z',
      },
      {
        what: {
          code: 'promise-step-make',
          parameters: { item: 'Orange butter', unit: 'pieces', amount: '5' },
        },
        itemId: 'butter',
        lot: null,
        from: '2026-11-27T09:30:00Z',
        to: '2026-11-28T10:00:00Z',
      },
    ]);
    expect(told).toMatchObject({ answer: 'yes', earliest: { from: '2026-11-27', to: '2026-11-28' } });
    expect(told.sentence.parameters).toMatchObject({ isRange: true });
  });

  it('is in time on the day wanted, and not the day before', () => {
    expect(answer([], { wantedBy: '2026-11-28' }).canGoOutBy).toBe(true);
    const perhaps = answer([], { wantedBy: '2026-11-27' });
    expect([perhaps.canGoOutBy, perhaps.sentence.code]).toEqual([false, 'promise-only-if-firm-early']);
    const late = answer([], { wantedBy: '2026-11-26' });
    expect([late.answer, late.sentence.code]).toEqual(['no', 'promise-cannot-go']);
  });

  it('waits for a base that still sets instead of making another', () => {
    const firm = { from: '2026-11-26T06:00:00Z', to: '2026-11-27T12:00:00Z' };
    const setting = lot('QB-7', '600', { status: 'quarantine', firm });
    const told = answer([{ itemId: 'base', lots: [setting] }]);
    expect(codes(told.steps)).toEqual(['promise-step-firm', 'promise-step-make', 'promise-step-make']);
    expect(told.earliest).toMatchObject({ from: '2026-11-26', to: '2026-11-27' });
    expect(told.reasons).toContainEqual({
      code: 'promise-firm-between',
      parameters: { item: 'Quiet base', from: firm.from, to: firm.to },
    });
  });

  it('asks for a look at a base whose longest time is over', () => {
    const firm = { from: '2026-11-24T06:00:00Z', to: '2026-11-25T12:00:00Z' };
    const told = answer([{ itemId: 'base', lots: [lot('QB-7', '600', { status: 'quarantine', firm })] }]);
    expect(codes(told.steps)[0]).toBe('promise-step-say-firm');
    expect(told.earliest).toMatchObject({ from: '2026-11-26', to: '2026-11-26' });
  });

  it('counts tins that only wait for release, and says so', () => {
    const filled = lot('T-1', '7', { status: 'quarantine', awaitsRelease: true });
    const told = answer([{ itemId: 'butter', lots: [filled] }]);
    expect(codes(told.steps)).toEqual(['promise-step-release']);
    expect(told.canGoOutBy).toBe(true);
  });

  it('takes no goods held in quarantine', () => {
    const held = lot('SH-2', '5000', { status: 'quarantine' });
    expect(answer([{ itemId: 'shea', lots: [held] }]).shortOf).toMatchObject([{ itemId: 'shea', have: '0' }]);
  });

  it('names what is short, and dates it by the lead days of the supplier', () => {
    const told = answer([{ itemId: 'tin', lots: [lot('TN-1', '3')] }], { wantedBy: '2026-12-04' });
    expect(told.shortOf).toEqual([
      { itemId: 'tin', name: 'The tin', unit: 'pieces', need: '5', have: '3', short: '2', leadDays: 5 },
    ]);
    // Thursday and five days: Tuesday morning, then filling.
    expect(told.earliest).toEqual({ from: '2026-12-01', to: '2026-12-01', dependsOnSupplier: true });
    expect(told).toMatchObject({ canGoOutBy: false, answer: 'if-bought' });
    expect(told.atHand.get('tin')).toEqual({ from: '2026-12-01T08:00:00Z', to: '2026-12-01T08:00:00Z' });
    expect(codes(told.steps)[0]).toBe('promise-step-buy');
  });

  it('names no day where nobody knows how long buying takes', () => {
    const told = answer([{ itemId: 'shea', lots: [], leadDays: null }]);
    expect(told).toMatchObject({ canGoOutBy: false, answer: 'not-known', earliest: null });
    expect(told.sentence.code).toBe('promise-unknown-until-bought');
    expect(told.steps.find(({ what }) => what.parameters.item === 'Orange butter')?.to).toBeNull();
  });

  it('says no where even a delivery at once would come too late', () => {
    const told = answer([{ itemId: 'shea', lots: [], leadDays: null }], { wantedBy: '2026-11-26' });
    expect(told).toMatchObject({ answer: 'no', earliest: null });
  });

  it('leaves out a lot that is past its date on the day it would be used', () => {
    // Good today, but the mixture is weighed on the 28th at the longest.
    const soon = lot('OR-1', '50', { bestBefore: '2026-11-27' });
    expect(answer([{ itemId: 'orange', lots: [soon] }]).shortOf).toMatchObject([
      { itemId: 'orange', have: '0' },
    ]);
    const justSo = lot('OR-1', '50', { bestBefore: '2026-11-28' });
    expect(answer([{ itemId: 'orange', lots: [justSo] }]).shortOf).toEqual([]);
  });

  it('makes only what is missing, out of set base first', () => {
    const told = answer([
      { itemId: 'butter', lots: [lot('T-1', '3')] },
      { itemId: 'base', lots: [lot('QB-1', '1000')] },
    ]);
    expect(told.steps.map(({ what }) => what.parameters.amount)).toEqual(['90', '2']);
    expect(told.earliest).toMatchObject({ from: '2026-11-26', to: '2026-11-26' });
  });

  it('has one pair of hands for two products, and shares what they have in common', () => {
    const small: PromiseItem = {
      ...tins,
      itemId: 'small',
      name: 'Small butter',
      making: { parts: [{ itemId: 'mixture', amount: 20 }], minutes: 700, settingHours: null },
    };
    const question = ask([{ itemId: 'base', lots: [lot('QB-1', '1000')] }]);
    const told = must(
      promiseDate({
        ...question,
        needs: [...question.needs, { itemId: 'small', quantity: 4 }],
        items: [...question.items, small],
      }),
    );
    const mixtures = told.steps.filter(({ what }) => what.parameters.item === 'Orange mixture');
    expect(mixtures.map(({ what }) => what.parameters.amount)).toEqual(['290']);
    // 30 min of mixing, 30 of filling, 700 of the small ones: over the end of a day of ten hours.
    expect(told.earliest?.to).toBe('2026-11-27');
  });

  it('starts first what sets longest', () => {
    const slow: PromiseItem = { ...base, itemId: 'slow', name: 'Slow base' };
    const both: PromiseItem = {
      ...mixture,
      making: {
        parts: [
          { itemId: 'base', amount: '0.5' },
          { itemId: 'slow', amount: '0.5' },
        ],
        minutes: 30,
        settingHours: null,
      },
    };
    const question = ask([{ itemId: 'mixture', making: both.making }]);
    const items = [
      ...question.items,
      { ...slow, making: base.making && { ...base.making, settingHours: { least: 60, most: 72 } } },
    ];
    const [first] = must(promiseDate({ ...question, items })).steps;
    expect(first?.what.parameters.item).toBe('Slow base');
  });

  it('is no question for what is bought and sold as it is', () => {
    const told = answer([], { needs: [{ itemId: 'tin', quantity: 20 }] });
    expect(told).toMatchObject({ canGoOutBy: true, steps: [] });
  });

  it('refuses a base that takes itself, and items that are not listed', () => {
    const making = { parts: [{ itemId: 'mixture', amount: 1 }], minutes: 1, settingHours: null };
    expect(promiseDate(ask([{ itemId: 'base', making }]))).toMatchObject({
      problems: [{ code: 'formula-contains-itself', found: 'Orange mixture > Quiet base > Orange mixture' }],
    });
    expect(promiseDate(ask([], { needs: [{ itemId: 'gone', quantity: 1 }] }))).toMatchObject({
      problems: [{ code: 'thing-not-found', found: 'gone' }],
    });
  });
});
