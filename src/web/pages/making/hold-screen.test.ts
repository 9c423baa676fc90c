import { describe, expect, it } from 'vitest';
import type { Step } from './batch.ts';
import { holdScreen } from './hold-screen.ts';

const screen = { done: null, whipped: [] } as unknown as Step;
const entered = { done: { by: 'Ada' }, whipped: [] } as unknown as Step;
const looked = { done: null, whipped: [{ round: 1 }] } as unknown as Step;

describe('the screen of a step whose entry is on its way', () => {
  it('stays as it was sent while the batch has the entry already', () => {
    expect(holdScreen({ screen, isRefused: false }, entered)?.screen).toBe(screen);
    expect(holdScreen({ screen, isRefused: false }, looked)?.screen).toBe(screen);
  });

  it('stays for the moment in which a refused entry is still shown, and then no longer', () => {
    expect(holdScreen({ screen, isRefused: true }, entered)?.screen).toBe(screen);
    expect(holdScreen({ screen, isRefused: true }, looked)?.screen).toBe(screen);
    expect(holdScreen({ screen, isRefused: true }, screen)).toBeUndefined();
  });

  it('is as the batch has it where nothing was sent', () => {
    expect(holdScreen(undefined, entered)).toBeUndefined();
  });
});
