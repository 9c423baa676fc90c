import type { z } from 'zod';
import { type Result, refused } from '../core/problem.ts';
import { problemsFromSchema } from '../core/problems-from-schema.ts';

/** Where an equation or a table comes from, and how well that is known (reference/README: confidence). */
export interface CalculationSource {
  readonly text: string;
  readonly confidence: 'read' | 'read-secondary' | 'computed' | 'derived' | 'memory';
}

export interface CalculationDefinition<Input extends z.ZodType, Output extends z.ZodType> {
  /** kebab-case: the name in `gramwright calc NAME` and `POST /api/calc/NAME`. */
  readonly name: string;
  readonly title: string;
  /** One sentence: what comes out, in which unit, from what. */
  readonly summary: string;
  /** The equation as the field writes it, with its symbols explained. */
  readonly equation: string;
  /** Over which inputs the equation holds, and how far off it may be. */
  readonly validRange: string;
  readonly sources: readonly CalculationSource[];
  /** A z.strictObject; each field `.describe()`d with its meaning and unit. */
  readonly input: Input;
  readonly output: Output;
  /** Run by the tests: the answer must equal the output, number for number. */
  readonly example: { readonly input: z.input<Input>; readonly output: z.output<Output> };
  readonly compute: (input: z.output<Input>) => Result<z.output<Output>>;
}

export interface Calculation<Input extends z.ZodType = z.ZodType, Output extends z.ZodType = z.ZodType>
  extends Omit<CalculationDefinition<Input, Output>, 'compute'> {
  /** Takes anything, e.g. parsed JSON: refuses what the schema refuses, else computes. */
  readonly run: (input: unknown) => Result<z.output<Output>>;
}

export function defineCalculation<Input extends z.ZodType, Output extends z.ZodType>(
  definition: CalculationDefinition<Input, Output>,
): Calculation<Input, Output> {
  const { compute, ...described } = definition;
  return {
    ...described,
    run(input) {
      const read = definition.input.safeParse(input);
      return read.success ? compute(read.data) : refused(...problemsFromSchema(read.error, input));
    },
  };
}
