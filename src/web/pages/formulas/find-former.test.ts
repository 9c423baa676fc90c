import { describe, expect, it } from 'vitest';
import { say } from '../../../words/index.ts';
import { findFormer } from './find-former.ts';

const decision = (marketKey: string, entryId: string, revision = 2) => ({
  marketKey,
  entryId,
  revision,
  verdict: 'accepted' as const,
  by: 'Ada Quill',
  reason: 'Certificate of lot 7 seen.',
  at: '2026-11-20T09:00:00Z',
});

describe('what was decided on a question of earlier revisions', () => {
  it('is found by the question, once however many markets it was for', () => {
    const former = [decision('GB:law:a', 'e2'), decision('NI:law:a', 'e2'), decision('GB:law:b', 'e3')];
    expect(findFormer({ key: 'GB:law:a | NI:law:a' }, former).map(({ entryId }) => entryId)).toEqual(['e2']);
  });

  it('stands there for each revision, the newest first as it came', () => {
    const former = [decision('GB:law:a', 'e5', 2), decision('GB:law:a', 'e1', 1)];
    expect(findFormer({ key: 'GB:law:a' }, former).map(({ revision }) => revision)).toEqual([2, 1]);
  });

  it('is nothing where nobody decided on it', () => {
    expect(findFormer({ key: 'EU:law:a' }, [decision('GB:law:a', 'e2')])).toEqual([]);
  });

  it('is said with its revision, who, when and why', () => {
    const { revision: number, verdict, by, at: on, reason } = decision('GB:law:a', 'e2');
    expect(say({ code: 'decision-formerly', parameters: { number, verdict, by, on, reason } })).toBe(
      'Decided for revision 2 by Ada Quill on 20 November 2026, accepted: Certificate of lot 7 seen.',
    );
  });
});
