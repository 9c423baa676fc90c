import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { orderStages } from './order-stages.ts';

describe('the order of the stages', () => {
  it('follows the lines where every stage is weighed', () => {
    expect(orderStages(['Melt', 'Melt', 'Cool'], ['Cool', 'Melt'])).toEqual(['Melt', 'Cool']);
  });

  it('puts a stage without additions where the method has it', () => {
    expect(orderStages(['Melt', 'Scent'], ['Melt', 'Set', 'Scent', 'Whip'])).toEqual([
      'Melt',
      'Set',
      'Scent',
      'Whip',
    ]);
  });

  it('knows a making without steps, and one without lines', () => {
    expect(orderStages(['Mix'], [])).toEqual(['Mix']);
    expect(orderStages([], ['Cover', 'Set'])).toEqual(['Cover', 'Set']);
  });

  it('names every stage once and keeps the order of the lines, whatever the method says', () => {
    const stage: fc.Arbitrary<string> = fc.constantFrom('a', 'b', 'c', 'd', 'e');
    fc.assert(
      fc.property(fc.array(stage), fc.array(stage), (lines, steps) => {
        const ordered = orderStages(lines, steps);
        expect([...ordered].sort()).toEqual([...new Set([...lines, ...steps])].sort());
        expect(ordered.filter((name) => lines.includes(name))).toEqual([...new Set(lines)]);
      }),
    );
  });
});
