import { describe, expect, it } from 'vitest';
import { checkWords } from '../../../words/index.ts';
import type { Question } from './question-state.tsx';
import { sumQuestions } from './sum-questions.ts';

const question = (key: string, verdict?: 'accepted' | 'refused', by = 'Ines Hartwell'): Question => ({
  key,
  substance: key,
  what: `what else is in ${key}`,
  markets: ['GB'],
  why: { code: 'unknown-rest', parameters: {} },
  upon: '',
  decided: verdict ? { entryId: key, verdict, by, reason: '', at: '2026-11-26T08:00:00Z' } : null,
  lapsed: null,
  earlier: [],
});

describe('questions, summed', () => {
  it('are those to be decided, those refused, and those accepted with who did', () => {
    const sum = sumQuestions([
      question('a', 'accepted'),
      question('b', 'accepted', 'Bo Marsh'),
      question('c', 'accepted'),
      question('d', 'refused'),
      question('e'),
    ]);
    expect(sum.accepted.map(({ key }) => key)).toEqual(['a', 'b', 'c']);
    expect(sum.acceptedBy).toEqual(['Ines Hartwell', 'Bo Marsh']);
    expect(sum.refused.map(({ key }) => key)).toEqual(['d']);
    expect(sum.open.map(({ key }) => key)).toEqual(['e']);
  });

  it('are told in one line', () => {
    expect(checkWords.sum.accepted(5, false, ['Ines Hartwell'])).toBe(
      '5 questions, all accepted by Ines Hartwell.',
    );
    expect(checkWords.sum.accepted(1, true, ['Ines Hartwell'])).toBe(
      'One more question, accepted by Ines Hartwell.',
    );
  });
});

describe('a market in a line', () => {
  it('is yes, or once what is decided, or no with what stands first in its way', () => {
    expect(checkWords.somewhere('yes', null, 0, 0)).toBe('yes');
    expect(checkWords.somewhere('decide', null, 0, 1)).toBe('once one question is decided');
    expect(checkWords.somewhere('no', 'No report covers it.', 2, 5)).toBe(
      'no. No report covers it. 2 more things stand against it. 5 questions are to be decided besides.',
    );
  });
});
