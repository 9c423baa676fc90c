import type { ElementLaw, LabelElement, LabelReason } from './label-question.ts';

/** An element before its name and its law are put on. */
export type Judged = Omit<LabelElement, 'element' | keyof ElementLaw>;

export const there = (text: string, reason: LabelReason | null = null): Judged => ({
  text,
  required: true,
  state: 'there',
  reason,
});

/** It stands there, and nothing asks for it. */
export const thereUnasked = (text: string, reason: LabelReason | null = null): Judged => ({
  ...there(text, reason),
  required: false,
});

export const missing = (reason: LabelReason, text = ''): Judged => ({
  text,
  required: true,
  state: 'missing',
  reason,
});

/** Whether it is right hangs on what nobody has told: never taken for right. */
export const notKnown = (reason: LabelReason, text = ''): Judged => ({
  ...missing(reason, text),
  state: 'unknown',
});

export const notNeeded = (reason: LabelReason | null, text = ''): Judged => ({
  text,
  required: false,
  state: 'not-needed',
  reason,
});

export const because = (code: string, parameters: LabelReason['parameters'] = {}): LabelReason => ({
  code,
  parameters,
});
