import { sayDecimal } from '../../words/index.ts';

export interface FlatValue {
  readonly name: string;
  readonly value: string;
}

const plain = (value: unknown): string =>
  value === null ? 'nothing' : typeof value === 'number' ? sayDecimal(value) : String(value);

/** Nested data as lines `lots[0].quantity: 12`, in its own order. */
export function flattenValues(value: unknown, name = ''): FlatValue[] {
  if (Array.isArray(value)) return value.flatMap((one, index) => flattenValues(one, `${name}[${index}]`));
  if (typeof value === 'object' && value !== null) {
    return Object.entries(value).flatMap(([key, one]) =>
      flattenValues(one, name === '' ? key : `${name}.${key}`),
    );
  }
  return value === undefined ? [] : [{ name, value: plain(value) }];
}
