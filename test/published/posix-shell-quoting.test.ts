import { execFileSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { quoteForShell } from '../../src/web/show/quote-for-shell.ts';

/**
 * What a POSIX shell makes of it, by the shell itself: IEEE Std 1003.1, Shell Command Language, 2.2.2 (single quotes
 * preserve the literal value of each character within them).
 */
const read = (word: string): string => execFileSync('sh', ['-c', `printf %s ${word}`]).toString();

describe('a path on a command line', () => {
  it('stays as it is where the shell takes it so', () => {
    expect(quoteForShell('/home/ada/my-workshop')).toBe('/home/ada/my-workshop');
    expect(quoteForShell('~/my-workshop')).toBe('~/my-workshop');
  });

  it('comes out of the shell as it went in', () => {
    for (const path of ["/home/ada/Ada's butters", '/srv/$HOME/a`b`', '/a "b"; c', '/tmp/été'])
      expect(read(quoteForShell(path))).toBe(path);
  });

  it('of Windows is put in double quotes', () => {
    expect(quoteForShell('C:\\Users\\Ada B\\shop')).toBe('"C:\\Users\\Ada B\\shop"');
  });
});
