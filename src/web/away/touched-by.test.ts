import { describe, expect, it } from 'vitest';
import { isTouchedBy } from './touched-by.ts';

const about = (subjectKind: string, subjectId: string) => ({
  seq: 1,
  kind: 'addition-recorded',
  subjectKind,
  subjectId,
  entryId: 'e',
  by: 'ada',
  device: 'tablet',
});

describe('what a write touches', () => {
  it('is the batch that it was about, its lists and everything that may hang on it', () => {
    const event = about('batch', 'b1');
    expect(isTouchedBy(event, ['getBatch', { params: { id: 'b1' } }])).toBe(true);
    expect(isTouchedBy(event, ['listBatches', {}])).toBe(true);
    expect(isTouchedBy(event, ['getMorning', {}])).toBe(true);
    expect(isTouchedBy(event, ['getRun', { params: { id: 'r1' } }])).toBe(true);
  });

  it('is no other batch, and no other run', () => {
    expect(isTouchedBy(about('batch', 'b1'), ['getBatch', { params: { id: 'b2' } }])).toBe(false);
    expect(isTouchedBy(about('filling-run', 'r1'), ['getRun', { params: { id: 'r2' } }])).toBe(false);
  });

  it('is everything, where a claim was answered', () => {
    expect(isTouchedBy(about('claim', 'c'), ['getBatch', { params: { id: 'b2' } }])).toBe(true);
  });
});
