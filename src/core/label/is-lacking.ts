import type { LabelElement } from './label-question.ts';

/** Holds the label: what it must bear is missing, or nobody knows whether it is right. */
export const isLacking = ({ state }: Pick<LabelElement, 'state'>): boolean =>
  state === 'missing' || state === 'unknown';
