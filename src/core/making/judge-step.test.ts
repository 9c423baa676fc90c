import { describe, expect, it } from 'vitest';
import { judgeBowlWeight } from './judge-bowl-weight.ts';
import { judgeStep, type WantedStep } from './judge-step.ts';

const wanted: WantedStep = {
  kind: 'hold',
  what: 'Hold it warm',
  leastCelsius: '70',
  mostCelsius: '75',
  minutes: '20',
  leastHours: null,
  isHandedOn: false,
};
const codes = (celsius: string | null, minutes: string | null, more: Partial<WantedStep> = {}) =>
  judgeStep({ ...wanted, ...more }, { celsius, minutes }).map((each) => each.code);

describe('what of a step was not as wanted', () => {
  it('is a temperature outside: both ends are still wanted', () => {
    expect(codes('70', null)).toEqual([]);
    expect(codes('75.0', null)).toEqual([]);
    expect(codes('69.99', null)).toEqual(['heat-not-wanted']);
    expect(codes('75.01', null)).toEqual(['heat-not-wanted']);
    expect(codes('20', null, { leastCelsius: null })).toEqual([]);
  });

  it('is a hold that was shorter, to the hundredth of a minute, and never a longer one', () => {
    expect(codes(null, '20')).toEqual([]);
    expect(codes(null, '19.99')).toEqual(['time-too-short']);
    expect(codes(null, '200')).toEqual([]);
  });

  it('tells both at once', () => {
    expect(codes('60', '2')).toEqual(['heat-not-wanted', 'time-too-short']);
  });

  it('judges no time where looking or measuring ends the step', () => {
    for (const kind of ['whip', 'mix', 'cool', 'weigh', 'cup'])
      expect(codes(null, '1', { kind })).toEqual([]);
  });

  it('counts hours of setting, and not of a base that sets on its shelf', () => {
    const set = { kind: 'set', leastHours: '1.5', minutes: null };
    expect(codes(null, '90', set)).toEqual([]);
    expect(codes(null, '89.9', set)).toEqual(['time-too-short']);
    expect(codes(null, '1', { ...set, isHandedOn: true })).toEqual([]);
  });

  it('does not judge what nobody measured', () => {
    expect(codes(null, null)).toEqual([]);
  });
});

describe('a bowl that is weighed', () => {
  const odd = (net: string, expected: string) => judgeBowlWeight(net, expected, 'w').map((each) => each.code);

  it('may lose something, and be a little heavier than its parts', () => {
    expect(odd('990', '1000')).toEqual([]);
    expect(odd('1020', '1000')).toEqual([]);
    expect(odd('500', '1000')).toEqual([]);
  });

  it('is asked about where a tare is forgotten, or half of it is gone', () => {
    expect(odd('1020.01', '1000')).toEqual(['bowl-heavier-than-filled']);
    expect(odd('499.99', '1000')).toEqual(['bowl-half-gone']);
    expect(odd('99', '1000')).toEqual(['bowl-half-gone']);
  });

  it('is not judged where nothing was weighed in', () => {
    expect(odd('99', '0')).toEqual([]);
  });
});
