import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { calculations } from './registry.ts';
import { writeReferencePage } from './write-reference-page.ts';

const file = resolve(import.meta.dirname, '../../docs/calculations.md');

describe('docs/calculations.md', () => {
  it('is what the catalogue says now (node scripts/write-calculation-docs.mjs)', () => {
    expect(readFileSync(file, 'utf8')).toBe(writeReferencePage(calculations));
  });

  it('has a section for each calculation', () => {
    const text = writeReferencePage(calculations);
    const headings = [...text.matchAll(/^## (.+)$/gm)].map((found) => found[1]);
    expect(headings).toEqual(calculations.map(({ name }) => name));
  });
});
