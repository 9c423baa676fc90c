import { describe, expect, it } from 'vitest';
import { makeUnsaved } from './unsaved.ts';

describe('half-typed forms', () => {
  it('are any as long as one of them is', () => {
    const unsaved = makeUnsaved();
    unsaved.mark('yield', true);
    unsaved.mark('reason', true);
    unsaved.mark('yield', false);
    expect(unsaved.isAny()).toBe(true);
    unsaved.mark('reason', false);
    expect(unsaved.isAny()).toBe(false);
  });

  it('count once however often they tell, and are none at first', () => {
    const unsaved = makeUnsaved();
    expect(unsaved.isAny()).toBe(false);
    unsaved.mark('yield', true);
    unsaved.mark('yield', true);
    unsaved.mark('yield', false);
    unsaved.mark('yield', false);
    expect(unsaved.isAny()).toBe(false);
  });
});
