import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { describeFields } from './describe-fields.ts';

const linesOf = (shape: z.ZodType) =>
  describeFields(shape, 'input').map(
    (it) => `${it.path}: ${it.type}${it.isRequired ? '' : '?'} | ${it.range} | ${it.about}`,
  );

describe('the fields of a shape', () => {
  it('are told with type, range and meaning, inner ones after the one that holds them', () => {
    const shape = z.strictObject({
      grams: z.number().min(0).lt(5).describe('a mass'),
      use: z.enum(['a', 'b']).default('a').describe('a choice'),
      lots: z
        .array(z.strictObject({ day: z.iso.date().describe('a day') }))
        .min(1)
        .max(3)
        .describe('a list'),
    });
    expect(linesOf(shape)).toEqual([
      'grams: number | from 0 to below 5 | a mass',
      'use: a, b? | default "a" | a choice',
      'lots: list of fields | at least 1 entry, at most 3 entries | a list',
      'lots[].day: date YYYY-MM-DD |  | a day',
    ]);
  });

  it('of choices, pairs, and values by name are told too', () => {
    const shape = z.strictObject({
      one: z
        .union([z.number(), z.array(z.number().int())])
        .optional()
        .describe('one or many'),
      pair: z.tuple([z.string(), z.number()]).describe('a pair'),
      byName: z.record(z.string(), z.strictObject({ x: z.boolean().describe('inner') })).describe('by name'),
    });
    expect(linesOf(shape)).toEqual([
      'one: number or list of whole number? |  | one or many',
      'pair: list [text, number] |  | a pair',
      'byName: fields by name |  | by name',
      'byName{name}.x: true or false |  | inner',
    ]);
  });

  it('without a meaning are told without one, so that a test can find them', () => {
    expect(describeFields(z.strictObject({ bare: z.number() }), 'input')[0]?.about).toBe('');
  });
});
