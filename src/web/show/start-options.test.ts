import { describe, expect, it } from 'vitest';
import { startOptions } from './start-options.ts';

describe('the options to start a workshop again', () => {
  it('name its folder, and its port where that is not the usual one', () => {
    expect(startOptions('/home/ada/butter', '4716')).toBe('/home/ada/butter');
    expect(startOptions('/home/ada/butter', '4800')).toBe('/home/ada/butter --port 4800');
    expect(startOptions('/home/ada/butter', ''), 'the address names none').toBe('/home/ada/butter');
  });

  it('keep a folder with spaces in one piece', () => {
    expect(startOptions('/home/ada/my butter', '4800')).toBe("'/home/ada/my butter' --port 4800");
  });
});
