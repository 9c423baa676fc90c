import { describe, expect, it } from 'vitest';
import { differenceFrom, EMPTY_WEIGHING, readFound, weighedOf } from './weigh-draft.ts';

const weighing = (gross: string, tare: string) => ({ ...EMPTY_WEIGHING, gross, tare });

describe('readFound', () => {
  it('takes the tub off what stands on the scale, exactly', () => {
    expect(readFound(weighing('29.4', '2.1'), 'g')).toEqual({ ok: true, value: '27.3' });
  });

  it('weighs without a tub where that is said, and asks where it is not', () => {
    expect(readFound(weighing('812', '0'), 'g')).toEqual({ ok: true, value: '812' });
    expect(readFound(weighing('812', ''), 'g')).toMatchObject({
      problems: [{ code: 'tare-not-said', where: 'tareGrams' }],
    });
  });

  it('refuses less than nothing on the scale at its own figure, whatever the tub weighs', () => {
    for (const tare of ['', '0', '48.2'])
      expect(readFound(weighing('-4', tare), 'g')).toMatchObject({
        problems: [{ code: 'gross-negative', where: 'grossGrams', found: '-4' }],
      });
  });

  it('finds an empty tub empty', () => {
    expect(readFound(weighing('48.20', '48.2'), 'g')).toEqual({ ok: true, value: '0' });
  });

  it('refuses a tub that alone weighs more than with what is in it', () => {
    expect(readFound(weighing('48.1', '48.2'), 'g')).toMatchObject({
      ok: false,
      problems: [{ code: 'tare-above-gross', where: 'tareGrams' }],
    });
  });

  it('counts pieces whole', () => {
    expect(readFound({ ...EMPTY_WEIGHING, pieces: '14' }, 'pieces')).toEqual({ ok: true, value: '14' });
    expect(readFound({ ...EMPTY_WEIGHING, pieces: '1.5' }, 'pieces').ok).toBe(false);
  });

  it('is missing a figure as long as nothing stands on the scale', () => {
    expect(readFound(EMPTY_WEIGHING, 'g')).toMatchObject({
      problems: [{ code: 'number-missing', where: 'grossGrams' }],
    });
  });
});

describe('differenceFrom', () => {
  it('has the sign of what is to be booked, without a float between', () => {
    expect(differenceFrom('27.3', '27.5')).toBe('-0.2');
    expect(differenceFrom('0.3', '0.1')).toBe('0.2');
  });
});

describe('weighedOf', () => {
  it('sends both figures as they were weighed, not the difference', () => {
    expect(weighedOf(weighing('1 029.4', '2.1'), 'g')).toEqual({
      ok: true,
      value: { grossGrams: '1029.4', tareGrams: '2.1' },
    });
  });

  it('sends a count as a whole number', () => {
    expect(weighedOf({ ...EMPTY_WEIGHING, pieces: '14' }, 'pieces')).toEqual({
      ok: true,
      value: { pieces: 14 },
    });
  });
});
