import { describe, expect, it } from 'vitest';
import { render } from './render.ts';
import { say } from './say.ts';
import { sayDate, sayDateInFull, sayDateWithYear, sayInstant, sayTime } from './say-date.ts';
import { sayDecimal, sayGrams, sayMoney, sayNumber } from './say-figure.ts';
import { sayProblem } from './say-problem.ts';

const APART = '\u00a0';

describe('figures', () => {
  it('are said with spaces between thousands, and never rounded where they are text', () => {
    expect(sayDecimal('12345.60')).toBe(`12${APART}345.60`);
    expect(sayDecimal('1234567')).toBe(`1${APART}234${APART}567`);
    expect(sayGrams('1234.5')).toBe(`1${APART}234.5\u00a0g`);
    expect(sayDecimal('0.000001')).toBe('0.000001');
    expect(sayDecimal('-12')).toBe('\u221212');
    expect(sayNumber(1234.56789)).toBe(`1${APART}234.568`);
    expect(sayMoney('27.4', 'GBP')).toBe('\u00a327.40');
    expect(sayMoney('1027.4', 'GBP')).toBe(`\u00a31${APART}027.40`);
    expect(sayMoney('-1234567', 'GBP')).toBe(`\u2212\u00a31${APART}234${APART}567.00`);
  });

  it('stay as they are where they are no figures', () => {
    expect(sayDecimal('a few')).toBe('a few');
  });
});

describe('days and times', () => {
  it('are said as a British workshop says them', () => {
    expect(sayDate('2026-11-27')).toBe('Friday 27 November');
    expect(sayDateWithYear('2027-11-27')).toBe('27 November 2027');
    // 3 December 2026 is a Thursday (any calendar).
    expect(sayDateInFull('2026-12-03')).toBe('Thursday 3 December 2026');
    expect(sayInstant('2026-11-27T08:05:00Z')).toBe('Friday 27 November, 08:05');
  });

  it('stand on the clock of the workshop, summer time and midnight included', () => {
    expect(sayTime('2026-07-01T08:05:00Z')).toBe('09:05');
    expect(sayTime('2026-11-27T08:05:00Z', 'Europe/Dublin')).toBe('08:05');
    expect(sayInstant('2026-11-26T23:30:00Z', 'Europe/Berlin')).toBe('Friday 27 November, 00:30');
  });
});

describe('a saying', () => {
  it('keeps the thousands of every figure apart, but never those of a name', () => {
    const text =
      '{found} g, {share} %, {have}{unit, select, g { g} other {}}, {tins} tins, order {number}, lot {lot}';
    const words = {
      found: '12345.5',
      share: '1000',
      have: '2500',
      unit: 'g',
      tins: 1200,
      number: 1042,
      lot: '20261',
    };
    expect(render(text, words)).toBe(
      `12${APART}345.5 g, 1${APART}000 %, 2${APART}500 g, 1${APART}200 tins, order 1042, lot 20261`,
    );
  });

  it('counts in plurals as before', () => {
    expect(render('{n, plural, one {# tin} other {{n} tins}}', { n: 1500 })).toBe(`1${APART}500 tins`);
  });

  it('has days by their names, years and times where the text asks, and plurals', () => {
    const words = { n: 1200, day: '2026-11-27' };
    expect(render('{n, plural, one {# tin} other {# tins}}', words)).toBe(`1${APART}200 tins`);
    expect(render('{day, date, long}', words)).toBe('27 November 2026');
    expect(render('{at, time, short}', { at: '2026-11-27T08:05:00Z' }, 'Europe/Berlin')).toBe('09:05');
  });

  it('says amounts with the digits that a scale shows, pieces as they are', () => {
    const short = (amount: string, unit: string) =>
      say({ code: 'shelf-short', parameters: { amount, unit } });
    expect(short('1109.589812', 'g')).toBe(`short by 1${APART}109.59 g`);
    expect(short('0.000004', 'g'), 'what would vanish stays').toBe('short by 0.000004 g');
    expect(short('1', 'pieces')).toBe('short by 1 piece');
    expect(short('1200', 'pieces')).toBe(`short by 1${APART}200 pieces`);
    const low = { code: 'shelf-low', parameters: { amount: '2.18384', below: '1500', unit: 'g' } };
    expect(say(low)).toBe(`2.18 g left, below 1${APART}500 g`);
  });

  it('without words is shown with its code and all it knows', () => {
    expect(say({ code: 'never-heard-of', parameters: { tins: 3, lot: null } })).toBe(
      'There are no words yet for \u201cnever-heard-of\u201d (tins: 3; lot: nothing).',
    );
  });
});

describe('a problem', () => {
  it('says what is wrong, what was found, and how to mend it', () => {
    expect(sayProblem({ code: 'mass-negative', where: 'lines[3].grams', found: '-2' })).toEqual({
      says: 'Line 4, grams is \u22122 g, less than nothing.',
      mend: 'Give a mass of nought or more.',
    });
    expect(
      sayProblem({
        code: 'value-too-small',
        where: 'name',
        found: '',
        allowed: 1,
        parameters: { counted: 'string' },
      }).mend,
    ).toBe('Give at least 1 character.');
    expect(
      sayProblem({ code: 'format-regex', where: 'code', found: 'b', allowed: '/^[A-Z]{2,4}$/' }).mend,
    ).toBe('Give two to four capital letters.');
  });

  it('says its dates with the year', () => {
    expect(sayProblem({ code: 'not-a-number', where: 'x', found: '2026-11-27' }).says).toContain(
      '27 November 2026',
    );
  });

  it('without words is shown with its code and all it knows', () => {
    const { says, mend } = sayProblem({
      code: 'never-heard-of',
      where: 'lines[0].grams',
      found: 3,
      allowed: 'less',
      source: 'a law',
      parameters: { lot: 'L-1' },
    });
    for (const known of ['never-heard-of', 'lines[0].grams', '3', 'less', 'a law', 'L-1']) {
      expect(says).toContain(known);
    }
    expect(mend).not.toBe('');
  });

  it('whose sentence has a gap is shown the same honest way', () => {
    expect(sayProblem({ code: 'changed-meanwhile', where: 'order', found: 1, allowed: 2 }).says).toContain(
      'changed-meanwhile',
    );
  });
});
