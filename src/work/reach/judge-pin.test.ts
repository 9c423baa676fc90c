import { describe, expect, it } from 'vitest';
import { judgePin } from './judge-pin.ts';
import { nextTryAt } from './pin-wait.ts';

describe('a PIN', () => {
  it.each(['4821', '1357', '0011', '12345679', '2468', '9091'])('%s may be chosen', (pin) => {
    expect(judgePin(pin, 'pin')).toBeUndefined();
  });

  it.each(['0000', '77777777', '1234', '4321', '0123', '98765432'])('%s is what everybody tries', (pin) => {
    expect(judgePin(pin, 'pin')).toEqual({ code: 'pin-too-plain', where: 'pin' });
  });
});

describe('after wrong PINs in a row the next try is taken', () => {
  const lastAt = '2026-11-26T08:00:00.000Z';
  it.each([
    [0, null],
    [1, null],
    [2, null],
    [3, '2026-11-26T08:00:30.000Z'],
    [4, '2026-11-26T08:01:00.000Z'],
    [5, '2026-11-26T08:05:00.000Z'],
    [6, '2026-11-26T08:15:00.000Z'],
    [7, '2026-11-26T09:00:00.000Z'],
    [9, '2026-11-26T09:00:00.000Z'],
    [10, 'never'],
    [11, 'never'],
  ])('%i: %s', (wrong, at) => {
    expect(nextTryAt({ wrong, lastAt })).toBe(at);
  });
});
