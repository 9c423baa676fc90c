import type { Problem } from '../../../core/problem.ts';
import { makingWords, sayProblem } from '../../../words/index.ts';

const { notAWeight } = makingWords;
const isShort = (code: string): code is keyof typeof notAWeight => Object.hasOwn(notAWeight, code);

/** Why no scale shows what is typed, as short as it can be said beside the digits. */
export const sayNotWeighed = (wrong: Problem): string =>
  isShort(wrong.code)
    ? notAWeight[wrong.code](String(wrong.found ?? ''), String(wrong.allowed ?? ''))
    : sayProblem(wrong).says;
