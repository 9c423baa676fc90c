import { describe, expect, it } from 'vitest';
import { askAboutTestReading } from '../../../core/weighing/index.ts';
import { asShown, beginTest, mayBegin, NOTHING, readingOf, readingsOf } from './test-draft.ts';

const scale = { readabilityGrams: '0.1', capacityGrams: '2000' };
const draftOf = (weight: string, readings = '') => ({ ...NOTHING, weight, readings });

describe('the weight of a test', () => {
  // As pages write a thousand: with a space, a narrow one, or one that does not break.
  it.each(['1000', '1 000', '1\u00a0000', '1\u202f000', ' 1000 '])(
    'typed as "%s" is one to count with',
    (typed) => {
      expect(mayBegin(draftOf(typed))).toBe(true);
      const begun = beginTest(draftOf(typed), '2026-11-26T10:16:00Z');
      expect(begun).toMatchObject({ weight: '1000', isBegun: 'yes' });
      expect(askAboutTestReading(readingOf(scale, begun, '1000.1'))).toBeNull();
      expect(askAboutTestReading(readingOf(scale, begun, '100'))?.code).toBe('reading-ten-times');
    },
  );

  it('that was kept as typed before is read all the same', () => {
    const kept = { ...draftOf('1 000', '1000 1000.1'), isBegun: 'yes' };
    expect(askAboutTestReading(readingOf(scale, kept, '1000'))).toBeNull();
    expect(readingOf(scale, kept, '1000').earlier).toEqual(['1000', '1000.1']);
  });

  it.each(['', '0', 'heavy', '-5'])('typed as "%s" begins nothing', (typed) => {
    expect(mayBegin(draftOf(typed))).toBe(false);
  });
});

it('a reading is written with the digits that the scale shows, and with more where more was typed', () => {
  expect(asShown('20', { readabilityGrams: '0.001' })).toBe('20.000');
  expect(asShown('20.5', { readabilityGrams: '1' })).toBe('20.5');
});

it('no readings are none, not an empty one', () => {
  expect(readingsOf(NOTHING)).toEqual([]);
});
