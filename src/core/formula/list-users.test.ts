import { describe, expect, it } from 'vitest';
import { listUsers } from './list-users.ts';

describe('formulas that a formula goes into', () => {
  const uses = [
    { formulaId: 'base', baseIds: [] },
    { formulaId: 'whipped', baseIds: ['base'] },
    { formulaId: 'orange', baseIds: ['whipped'] },
    { formulaId: 'lavender', baseIds: ['base'] },
    { formulaId: 'balm', baseIds: [] },
  ];

  it('are itself and, through bases of bases, each once', () => {
    expect(listUsers('base', uses).sort()).toEqual(['base', 'lavender', 'orange', 'whipped']);
    expect(listUsers('whipped', uses).sort()).toEqual(['orange', 'whipped']);
  });

  it('are itself alone where no other names it, or nothing is written of it', () => {
    expect(listUsers('balm', uses)).toEqual(['balm']);
    expect(listUsers('lost', uses)).toEqual(['lost']);
  });

  it('end where two formulas name each other', () => {
    const circle = [
      { formulaId: 'one', baseIds: ['two'] },
      { formulaId: 'two', baseIds: ['one'] },
    ];
    expect(listUsers('one', circle).sort()).toEqual(['one', 'two']);
  });
});
