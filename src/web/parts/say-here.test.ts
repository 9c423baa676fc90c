import { describe, expect, it } from 'vitest';
import { problem } from '../../core/problem.ts';
import { sayHere } from './say-here.ts';

describe('sayHere', () => {
  it('calls a field by its label, not by its path', () => {
    const found = problem('number-missing', 'scale.readabilityGrams');
    expect(sayHere(found, 'Smallest step it shows').says).toBe('Smallest step it shows is empty.');
  });

  it('calls an empty text empty, as nobody thinks of it as too short', () => {
    const found = problem('value-too-small', 'name', {
      found: '',
      allowed: 1,
      parameters: { counted: 'string' },
    });
    expect(sayHere(found, 'Your name').says).toBe('Your name is empty.');
  });

  it('leaves a text that is short but not empty as it was judged', () => {
    const found = problem('value-too-small', 'lines', {
      found: '[]',
      allowed: 1,
      parameters: { counted: 'array' },
    });
    expect(sayHere(found).says).not.toContain('empty');
  });
});
