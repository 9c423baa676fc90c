import { z } from 'zod';
import { exact, toText } from '../core/quantity/index.ts';

/** One field of a calculation, ready for help and docs. */
export interface FieldDescription {
  /** `inclusions[].massFraction`: a field of each entry of a list. */
  readonly path: string;
  readonly type: string;
  readonly isRequired: boolean;
  readonly range: string;
  readonly about: string;
}

interface JsonSchema {
  readonly type?: string;
  readonly description?: string;
  readonly default?: unknown;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
  readonly exclusiveMaximum?: number;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly format?: string;
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly required?: readonly string[];
  readonly items?: JsonSchema;
  readonly prefixItems?: readonly JsonSchema[];
  readonly anyOf?: readonly JsonSchema[];
  readonly oneOf?: readonly JsonSchema[];
  readonly additionalProperties?: JsonSchema | boolean;
}

const choicesOf = (schema: JsonSchema): readonly JsonSchema[] => schema.anyOf ?? schema.oneOf ?? [];

function typeOf(schema: JsonSchema): string {
  if (schema.const !== undefined) return String(schema.const);
  if (schema.enum) return schema.enum.map(String).join(', ');
  const choices = choicesOf(schema);
  if (choices.length > 0) return [...new Set(choices.map(typeOf))].join(' or ');
  if (schema.prefixItems) return `list [${schema.prefixItems.map(typeOf).join(', ')}]`;
  if (schema.type === 'array') return `list of ${typeOf(schema.items ?? {})}`;
  if (schema.type === 'object') return schema.properties ? 'fields' : 'fields by name';
  if (schema.type === 'string') return schema.format === 'date' ? 'date YYYY-MM-DD' : 'text';
  if (schema.type === 'integer') return 'whole number';
  if (schema.type === 'boolean') return 'true or false';
  return schema.type ?? 'anything';
}

const entries = (count: number): string => `${count} ${count === 1 ? 'entry' : 'entries'}`;

/** Digits as a person writes them, never with an exponent. */
const inDigits = (value: number): string => toText(exact(value));

/** `from 0 to below 1`, `at least 1 entry`. */
function boundsOf(schema: JsonSchema): string {
  const parts = [
    schema.minimum !== undefined && `from ${inDigits(schema.minimum)}`,
    schema.exclusiveMinimum !== undefined && `above ${inDigits(schema.exclusiveMinimum)}`,
    schema.maximum !== undefined &&
      schema.maximum < Number.MAX_SAFE_INTEGER &&
      `to ${inDigits(schema.maximum)}`,
    schema.exclusiveMaximum !== undefined && `to below ${inDigits(schema.exclusiveMaximum)}`,
  ];
  return parts.filter((part) => part !== false).join(' ');
}

function rangeOf(schema: JsonSchema): string {
  const isPair = schema.prefixItems !== undefined;
  const parts = [
    boundsOf(schema),
    !isPair && schema.minItems !== undefined && `at least ${entries(schema.minItems)}`,
    !isPair && schema.maxItems !== undefined && `at most ${entries(schema.maxItems)}`,
    schema.default !== undefined && `default ${JSON.stringify(schema.default)}`,
  ];
  return parts.filter((part) => part !== false && part !== '').join(', ');
}

/** Fields inside a field: of an object, of each entry of a list, of each choice, of each named value. */
function innerOf(schema: JsonSchema, path: string): FieldDescription[] {
  const own = Object.entries(schema.properties ?? {}).flatMap(([name, field]) =>
    fieldOf(field, path === '' ? name : `${path}.${name}`, (schema.required ?? []).includes(name)),
  );
  const listed = [...(schema.items ? [schema.items] : []), ...(schema.prefixItems ?? [])];
  const named = typeof schema.additionalProperties === 'object' ? [schema.additionalProperties] : [];
  return [
    ...own,
    ...listed.flatMap((item) => innerOf(item, `${path}[]`)),
    ...named.flatMap((value) => innerOf(value, `${path}{name}`)),
    ...choicesOf(schema).flatMap((choice) => innerOf(choice, path)),
  ];
}

const fieldOf = (schema: JsonSchema, path: string, isRequired: boolean): FieldDescription[] => [
  { path, type: typeOf(schema), isRequired, range: rangeOf(schema), about: schema.description ?? '' },
  ...innerOf(schema, path),
];

/** Every field of a shape, in its order, inner ones after the one that holds them; several choices may name one twice. */
export function describeFields(shape: z.ZodType, io: 'input' | 'output'): FieldDescription[] {
  const schema = z.toJSONSchema(shape, { io, unrepresentable: 'any', reused: 'inline' }) as JsonSchema;
  const seen = new Set<string>();
  return innerOf(schema, '').filter(({ path }) => !seen.has(path) && seen.add(path));
}
