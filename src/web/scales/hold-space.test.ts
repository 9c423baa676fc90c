import { describe, expect, it } from 'vitest';
import { makeSpaceHolder } from './hold-space.ts';

/** Buttons under a hand and under a scale, with a clock that is let run. */
function atBench() {
  let presses = 0;
  let waiting: (() => void)[] = [];
  const button = { click: () => void presses++ };
  const held = makeSpaceHolder((then) => {
    waiting.push(then);
    return () => {
      waiting = waiting.filter((each) => each !== then);
    };
  });
  return {
    onButton: { closest: () => button },
    onPage: { closest: () => null },
    held,
    /** No key came for as long as a scale takes to the next. */
    wait() {
      for (const then of waiting) then();
      waiting = [];
    },
    presses: () => presses,
  };
}

describe('the space bar on a button', () => {
  it('presses it once, where it is a person’s', () => {
    const { held, onButton, wait, presses } = atBench();
    expect(held.down(' ', onButton)).toBe(true);
    expect(presses()).toBe(0);
    wait();
    expect([held.up(' '), presses()]).toEqual([true, 1]);
    held.down(' ', onButton);
    held.up(' ');
    wait();
    expect(presses()).toBe(2);
  });

  it('presses it once, however long it is held down', () => {
    const { held, onButton, wait, presses } = atBench();
    held.down(' ', onButton);
    wait();
    expect(held.down(' ', onButton)).toBe(true);
    expect(held.down(' ', onButton)).toBe(true);
    wait();
    held.up(' ');
    expect(presses()).toBe(1);
  });

  it('presses nothing, where a scale pads its line with it', () => {
    const { held, onButton, wait, presses } = atBench();
    for (const key of '   12.34 ') {
      expect(held.down(key, onButton)).toBe(key === ' ');
      expect(held.up(key)).toBe(key === ' ');
    }
    held.down('Enter', onButton);
    wait();
    expect(presses()).toBe(0);
  });

  it('is left alone where it is on no button', () => {
    const { held, onPage, wait, presses } = atBench();
    expect([held.down(' ', onPage), held.up(' '), held.down(' ', null)]).toEqual([false, false, false]);
    wait();
    expect(presses()).toBe(0);
  });
});
