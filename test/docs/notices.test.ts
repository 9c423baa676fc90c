import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { expect, it } from 'vitest';

const root = resolve(import.meta.dirname, '../..');

it('names every shipped package with its licence, as the lock file has it', async () => {
  const { notices } = (await import(resolve(root, 'scripts/write-notices.mjs'))) as { notices: () => string };
  expect(readFileSync(resolve(root, 'THIRD-PARTY-NOTICES.md'), 'utf8')).toBe(notices());
});

it('carries the font licence in full', () => {
  expect(readFileSync(resolve(root, 'THIRD-PARTY-NOTICES.md'), 'utf8')).toContain(
    'SIL OPEN FONT LICENSE Version 1.1',
  );
});
