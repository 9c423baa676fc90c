import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { routes } from '../contract/index.ts';
import { sayWhere, wordsOfField } from './say-where.ts';

interface Shape {
  readonly properties?: Readonly<Record<string, Shape>>;
  readonly items?: Shape;
  readonly anyOf?: readonly Shape[];
  readonly oneOf?: readonly Shape[];
}

/** Every path that a problem of this shape can be at: `details.lines[0].grams`. */
function pathsOf(shape: Shape, path = ''): string[] {
  const inside = Object.entries(shape.properties ?? {}).flatMap(([name, one]) =>
    pathsOf(one, path === '' ? name : `${path}.${name}`),
  );
  const items = shape.items ? pathsOf(shape.items, `${path}[0]`) : [];
  const choices = [...(shape.anyOf ?? []), ...(shape.oneOf ?? [])].flatMap((one) => pathsOf(one, path));
  return [...(path === '' ? [] : [path]), ...inside, ...items, ...choices];
}

const contractPaths = (): string[] => {
  const shapes = Object.values(routes).flatMap(
    (route: { readonly input?: z.ZodType; readonly query?: z.ZodType }) =>
      [route.input, route.query].filter((shape) => shape !== undefined),
  );
  const found = shapes.flatMap((shape) =>
    pathsOf(z.toJSONSchema(shape, { io: 'input', unrepresentable: 'any' }) as Shape),
  );
  return [...new Set(found)];
};

const withoutWords = (paths: readonly string[]): string[] =>
  paths.filter((path) =>
    path.split('.').some((part, place, parts) => wordsOfField(part, parts[place - 1]) === undefined),
  );

/** Lists of plain values: a list by itself is named, its entries follow from it. */
const isPlainEntry = (path: string): boolean => path.endsWith('[0]');

describe('where', () => {
  it('goes by the label that the field bears on its page', () => {
    expect(sayWhere('lines[0].units')).toBe('line 1, how many');
    expect(sayWhere('actualGrams')).toBe('grams on the scale');
    expect(sayWhere('size.retained.reason')).toBe('why no sample is kept');
    expect(sayWhere('details.signedOn')).toBe('signed on');
    expect(sayWhere('scale.readabilityGrams')).toBe('smallest step it shows');
    expect(sayWhere('wish.size.tins[1].units')).toBe('tin 2, how many');
    expect(sayWhere('details.steps[2].leastCelsius')).toBe('step 3, from');
  });

  it('keeps what is always written with capitals', () => {
    expect(sayWhere('details.cas')).toBe('CAS numbers');
    expect(sayWhere('details.category')).toBe('IFRA category');
  });

  it('quotes a label that asks', () => {
    expect(sayWhere('customerId')).toBe('\u201cWho is it for?\u201d');
    expect(sayWhere('Who is it for?')).toBe('\u201cWho is it for?\u201d');
  });

  it('says an input of a calculation, which has no page, by its own name', () => {
    expect(sayWhere('overrunPercent')).toBe('overrun percent');
    expect(sayWhere('values[1][2]')).toBe('value 2, 3');
    expect(sayWhere('categories[0]')).toBe('category 1');
  });

  it('keeps names of things and paths of files', () => {
    for (const name of ['order 103', '/home/maker/Gramwright/workshop.gramwright', 'Shea butter']) {
      expect(sayWhere(name)).toBe(name);
    }
  });

  it('has words for every field of the contract, and for its entries where it is a list of more than values', () => {
    const paths = contractPaths();
    expect(paths).toContain('details.lines[0].grams');
    expect(paths.length).toBeGreaterThan(150);
    expect(withoutWords(paths.filter((path) => !isPlainEntry(path)))).toEqual([]);
  });

  it('has words for every field that a page puts its problems at', () => {
    const pages = resolve(import.meta.dirname, '../web/pages');
    const source = readdirSync(pages, { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.tsx'))
      .map((file) => readFileSync(join(pages, file), 'utf8'))
      .join('\n');
    const paths = [...source.matchAll(/where="([A-Za-z.]+)"/g)].map((found) => found[1] ?? '');
    expect(paths.length).toBeGreaterThan(60);
    expect(withoutWords([...new Set(paths)])).toEqual([]);
  });

  it('has words for every field that the workshop refuses by a name of its own', () => {
    const work = resolve(import.meta.dirname, '../work');
    const source = readdirSync(work, { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.ts') && !file.includes('.test.'))
      .map((file) => readFileSync(join(work, file), 'utf8'))
      .join('\n');
    const paths = [...source.matchAll(/\bproblem\(\s*'[a-z-]+',\s*'([A-Za-z.]+)'/g)].map(
      (found) => found[1] ?? '',
    );
    expect(paths.length).toBeGreaterThan(20);
    expect(withoutWords([...new Set(paths)])).toEqual([]);
  });
});
