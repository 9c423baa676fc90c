import { afterEach, describe, expect, it, vi } from 'vitest';
import { problem } from '../core/problem.ts';
import { sayProblems } from './say-problems.ts';

afterEach(() => vi.restoreAllMocks());

describe('a refusal on the command line', () => {
  const late = problem('entry-in-future', 'stamp.at', {
    found: '2026-11-26T09:05:00Z',
    allowed: '2026-11-26T08:05:00Z',
  });
  function printed(...problems: Parameters<typeof sayProblems>[0]): string {
    const written = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
    expect(sayProblems(problems)).toBe(1);
    return written.mock.calls.map(([text]) => String(text)).join('');
  }

  it('is said in the words of whoever knows the workshop’s clock', () => {
    const text = printed({ ...late, says: 'It is only 03:05 here.', mend: 'Set the clock.' });
    expect(text).toContain('It is only 03:05 here.');
    expect(text).not.toContain('08:05');
  });

  it('is put into words here where no workshop is open', () => {
    expect(printed(late)).toContain('Thursday 26 November, 08:05');
  });
});
