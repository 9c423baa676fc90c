import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

/** Numbers that name a thing or count what no workshop has a thousand of. */
const NO_FIGURES = /^(number|revision|index|screen|all|done|depth|schema|version)$/;
const FUNCTION = /\(([^()]*)\)\s*=>\s*([\s\S]*?)(?=,\n\s{2,6}[A-Za-z'}]|;\n|\n\};)/g;

const bareFigures = (text: string): string[] =>
  [...text.matchAll(FUNCTION)].flatMap(([, parameters = '', body = '']) =>
    [...parameters.matchAll(/(\w+): number/g)]
      .map(([, name = '']) => name)
      .filter((name) => !NO_FIGURES.test(name) && body.includes(`\${${name}}`)),
  );

describe('the words of the pages', () => {
  it('finds a count that is put in as it is', () => {
    expect(bareFigures(`  tins: (count: number) => \`\${count} tins\`,\n  next: '',`)).toEqual(['count']);
  });

  it('say every count with its thousands apart', () => {
    const wrong = readdirSync(import.meta.dirname)
      .filter((file) => file.endsWith('.en-gb.ts'))
      .flatMap((file) =>
        bareFigures(readFileSync(join(import.meta.dirname, file), 'utf8')).map(
          (name) => `${name} in ${file}`,
        ),
      );
    expect(wrong).toEqual([]);
  });
});
