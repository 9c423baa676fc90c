import { type Problem, problem } from '../problem.ts';

/** What a customer's word is about. */
export const COMPLAINT_KINDS = [
  'skin-reaction',
  'other-health',
  'smell-or-look',
  'packaging',
  'other',
] as const;
export type ComplaintKind = (typeof COMPLAINT_KINDS)[number];

/** What makes an effect serious: Regulation (EC) No 1223/2009, Article 2(1)(p), word by word. */
export const SERIOUS_MARKS = [
  'functional-incapacity',
  'disability',
  'hospitalisation',
  'congenital-anomaly',
  'vital-risk',
  'death',
] as const;
export type SeriousMark = (typeof SERIOUS_MARKS)[number];

export const EFFECTS = ['none', 'undesirable', 'serious'] as const;
export type Effect = (typeof EFFECTS)[number];

export interface JudgedEffect {
  readonly kind: ComplaintKind;
  readonly effect: Effect;
  readonly marks: readonly SeriousMark[];
  /** Somebody has looked into it and says why: then a word on health need not count. */
  readonly isLookedInto: boolean;
}

const isHealth = (kind: ComplaintKind): boolean => kind === 'skin-reaction' || kind === 'other-health';

/**
 * Whether a word on a product is counted as what it says. One of the marks makes it serious and nothing else does; what
 * somebody's skin or health is said to have done counts as an undesirable effect until a person has looked into it.
 * Whether the product was the cause is not judged here.
 * Source: Regulation (EC) No 1223/2009, Article 2(1)(o) and (p).
 */
export function judgeEffect({ kind, effect, marks, isLookedInto }: JudgedEffect): Problem[] {
  if (marks.length > 0 && effect !== 'serious')
    return [problem('effect-is-serious', 'effect', { found: effect, allowed: 'serious' })];
  if (marks.length === 0 && effect === 'serious')
    return [problem('serious-without-mark', 'marks', { found: 0, allowed: 1 })];
  if (isHealth(kind) && effect === 'none' && !isLookedInto)
    return [problem('health-effect-counts', 'effect', { found: effect, allowed: 'undesirable' })];
  return [];
}
