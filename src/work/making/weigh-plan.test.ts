import { describe, expect, it } from 'vitest';
import { exact } from '../../core/quantity/index.ts';
import { neededToleranceOf } from './weigh-plan.ts';

const needed = (headroom: string | null, footroom: string | null = null, isDelicate = true) =>
  neededToleranceOf({
    isDelicate,
    headroom: headroom === null ? null : exact(headroom),
    footroom: footroom === null ? null : exact(footroom),
  }).toFixed();

describe('within which an addition has to be weighed', () => {
  it('is 2 % of a butter and 5 % of a scent, where nothing binds them nearer', () => {
    expect([needed(null, null, false), needed(null), needed('1.5')]).toEqual(['0.02', '0.05', '0.05']);
  });

  it('is the room up to its limit, and down to what the report asks at least', () => {
    expect([needed('1.05'), needed('1.049'), needed('1.012', null, false)]).toEqual([
      '0.05',
      '0.049',
      '0.012',
    ]);
    expect([needed('1.5', '0.96'), needed(null, '0.995', false)]).toEqual(['0.04', '0.005']);
  });

  it('is never narrower than a thousandth: at its limit, or beyond it in a trial', () => {
    expect([needed('1'), needed('0.8'), needed('1.0005'), needed('1.5', '1')]).toEqual([
      '0.001',
      '0.001',
      '0.001',
      '0.001',
    ]);
  });
});
