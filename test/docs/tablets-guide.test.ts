import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { reachGuide } from '../../src/words/index.ts';
import { nextTryAt, PIN_TRIES } from '../../src/work/reach/pin-wait.ts';

const guide = readFileSync(resolve(import.meta.dirname, '../../docs/tablets-and-phones.md'), 'utf8');

describe('the guide to tablets and phones', () => {
  it.each(reachGuide.devices.map(({ name, steps }) => ({ name, steps })))(
    'has each step for $name, as the pages show it',
    ({ name, steps }) => {
      const part = guide.split(`### ${name}\n`)[1]?.split('\n## ')[0]?.split('\n### ')[0] ?? '';
      expect(part.trim().split('\n')).toEqual(steps.map((step, place) => `${place + 1}. ${step}`));
    },
  );

  it('says of wrong PINs what the program does', () => {
    const lastAt = '2026-11-26T08:00:00.000Z';
    const waits = Array.from({ length: PIN_TRIES }, (_, place) => {
      const at = nextTryAt({ wrong: place + 1, lastAt });
      return at === null || at === 'never' ? at : (Date.parse(at) - Date.parse(lastAt)) / 1000;
    });
    expect(waits).toEqual([null, null, 30, 60, 300, 900, 3600, 3600, 3600, 'never']);
    for (const row of ['| 3 | after 30 seconds |', '| 4 | after a minute |', '| 7, 8, 9 | after an hour |'])
      expect(guide).toContain(row);
  });
});
