import { describe, expect, it } from 'vitest';
import { listWays } from './release-ways.ts';
import type { Run } from './run.ts';

const run = { id: 'r', batchId: 'b', formulaId: 'f', productId: 'p', lotId: 'l' } as Run;
const waysOf = (check: string) =>
  listWays(run, { check, isPassed: false, detail: { code: 'x', parameters: {} } }).map(({ to }) => to);

describe('the ways out of what is not passed', () => {
  it('lead to what was weighed in, to the assessor and to a newer report', () => {
    expect(waysOf('weighed')).toEqual(['/making/b', '/formulas/f/worksheet', '/reports']);
  });

  it.each([
    'purpose',
    'weights',
    'markets',
    'limits',
    'report',
    'worst',
    'lots',
    'claims',
    'label-GB',
    'label-age-NI',
  ])('are there for %s', (check) => expect(waysOf(check).length).toBeGreaterThan(0));
});
