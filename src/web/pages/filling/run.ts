import type { AnswerOf } from '../../api/shapes.ts';

export type Run = AnswerOf<'getRun'>;
export type Weight = Run['weights'][number];
export type FillWay = Run['way'];

/** A tin that stands: not taken out, and not weighed again since. */
export const isTin = ({ isStruck, isRefilled }: Weight): boolean => !isStruck && !isRefilled;

export const isOpen = (run: Run): boolean => run.state === 'filling';
