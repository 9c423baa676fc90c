import { describe, expect, it } from 'vitest';
import { findNextAct } from './find-next-act.ts';

type Promised = Parameters<typeof findNextAct>[0]['promise'];
const step = (code: string, to?: string): Promised['steps'][number] => ({
  what: { code, parameters: {} },
  when: null,
  action: to === undefined ? null : { words: { code: 'order-act-plan', parameters: {} }, to },
});
const next = (steps: Promised['steps'], tinsReady = 0) =>
  findNextAct({
    promise: {
      answer: 'yes',
      sentence: { code: 'order-is-sent', parameters: {} },
      tinsReady,
      orderBy: null,
      notForSale: [],
      earliest: null,
      short: [],
      steps,
    },
  });

describe('the next thing to do for an order', () => {
  it('is to send it where nothing has to happen first', () => {
    expect(next([], 5)).toBe('send');
  });

  it('is what has to happen first, even where some of it could be sent', () => {
    const steps = [step('promise-step-make', '/making/new'), step('order-step-fill-same-day')];
    expect(next(steps, 2)).toMatchObject({ to: '/making/new' });
  });

  it('is other tins where some that were put aside may not go', () => {
    expect(next([step('order-step-keep-others')], 5)).toBe('keep');
  });

  it('is nothing where nothing can be sent and nothing has a place where it is done', () => {
    expect(next([], 0)).toBeNull();
    expect(next([step('order-step-fill-same-day')])).toBeNull();
  });
});
