// Writes docs/calculations.md from the built catalogue.
import { writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

const root = resolve(import.meta.dirname, '..');
const { calculations, writeReferencePage } = await import(join(root, 'dist/program/catalogue.js'));
writeFileSync(join(root, 'docs/calculations.md'), writeReferencePage(calculations));
