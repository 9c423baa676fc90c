import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { problemsFromSchema } from './problems-from-schema.ts';

function problemsOf(schema: z.ZodType, input: unknown) {
  const read = schema.safeParse(input);
  return read.success ? [] : problemsFromSchema(read.error, input);
}

describe('problems from a schema', () => {
  it('say where, what was found and what is allowed', () => {
    const schema = z.strictObject({ lines: z.array(z.strictObject({ grams: z.number().min(1).max(9) })) });
    expect(problemsOf(schema, { lines: [{ grams: 3 }, { grams: 0 }, { grams: 'x' }, {}] })).toEqual([
      {
        code: 'value-too-small',
        where: 'lines[1].grams',
        found: 0,
        allowed: 1,
        parameters: { counted: 'number' },
      },
      { code: 'field-wrong-type', where: 'lines[2].grams', found: 'x', allowed: 'number' },
      { code: 'field-missing', where: 'lines[3].grams', allowed: 'number' },
    ]);
  });

  it('name each unknown field', () => {
    expect(problemsOf(z.strictObject({}), { one: 1, two: 2 }).map((it) => [it.code, it.where])).toEqual([
      ['field-unknown', 'one'],
      ['field-unknown', 'two'],
    ]);
  });

  it('name the choices of a value and of a union told apart by one field', () => {
    expect(problemsOf(z.object({ use: z.enum(['a', 'b']) }), { use: 'c' })[0]).toMatchObject({
      code: 'value-not-one-of',
      allowed: 'a, b',
    });
    const size = z.discriminatedUnion('by', [
      z.object({ by: z.literal('tins') }),
      z.object({ by: z.literal('grams') }),
    ]);
    expect(problemsOf(z.object({ size }), { size: { by: 'x' } })[0]).toEqual({
      code: 'value-not-one-of',
      where: 'size.by',
      found: 'x',
      allowed: 'tins, grams',
    });
  });

  it('say of a union what its fullest shape lacks', () => {
    const listOrNumber = z.union([z.number(), z.array(z.number().min(0))]);
    expect(problemsOf(z.object({ a: listOrNumber }), { a: 'x' })).toEqual([
      { code: 'field-wrong-type', where: 'a', found: 'x', allowed: 'number or array' },
    ]);
    expect(problemsOf(z.object({ a: listOrNumber }), { a: [1, -1] })).toMatchObject([
      { code: 'value-too-small', where: 'a[1]', found: -1, allowed: 0 },
    ]);
  });

  it('have a code of their own for each way of writing', () => {
    const schema = z.object({ d: z.iso.date(), r: z.string().regex(/^[A-Z]{2}$/), e: z.email() });
    expect(problemsOf(schema, { d: '2026-02-30', r: 'x', e: 'y' })).toEqual([
      { code: 'format-date', where: 'd', found: '2026-02-30', allowed: 'date' },
      { code: 'format-regex', where: 'r', found: 'x', allowed: '/^[A-Z]{2}$/' },
      { code: 'format-other', where: 'e', found: 'y', allowed: 'email' },
    ]);
  });

  it('refuse what is no object at all, not a number, or nothing', () => {
    for (const input of [undefined, null, 3, 'x', [], Number.NaN]) {
      expect(problemsOf(z.strictObject({ a: z.number() }), input)).toHaveLength(1);
    }
    expect(problemsOf(z.object({ a: z.number() }), { a: Number.NaN })[0]).toMatchObject({ found: 'NaN' });
  });

  it('cut what was found where it is long', () => {
    const [first] = problemsOf(z.object({ a: z.number() }), { a: 'x'.repeat(500) });
    expect(String(first?.found)).toHaveLength(80);
  });
});
