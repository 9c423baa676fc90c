import { cliWords } from '../../words/index.ts';
import { quoteForShell } from './quote-for-shell.ts';

/** What follows `--folder` to start a workshop again as it runs now: its folder, and its port where that is not the usual one. */
export const startOptions = (folder: string, port: string): string =>
  [quoteForShell(folder), ...(port === cliWords.usualPort || port === '' ? [] : [`--port ${port}`])].join(
    ' ',
  );
