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

  it('are waited for while they are being kept, and are lost only where that was refused', async () => {
    const unsaved = makeUnsaved();
    for (const isKept of [true, false]) {
      let answer: (isKept: boolean) => void = () => undefined;
      const save = new Promise<boolean>((resolve) => {
        answer = resolve;
      });
      unsaved.mark('material', true, () => save);
      const isLoss = unsaved.isAnyAfterSaving();
      answer(isKept);
      expect(await isLoss).toBe(!isKept);
    }
  });

  it('are lost without waiting where another form is not being kept', async () => {
    const unsaved = makeUnsaved();
    unsaved.mark('material', true, () => Promise.resolve(true));
    unsaved.mark('note', true, () => undefined);
    expect(await unsaved.isAnyAfterSaving()).toBe(true);
    unsaved.mark('note', false);
    expect(await unsaved.isAnyAfterSaving()).toBe(false);
  });
});
