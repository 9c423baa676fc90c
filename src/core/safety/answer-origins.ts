/** What somebody may be allergic to, or may not want, that a material can come from. */
export const ORIGIN_FLAGS = [
  'tree-nut',
  'peanut',
  'wheat',
  'soya',
  'sesame',
  'bee',
  'milk',
  'animal',
  'palm',
  'daisy-family',
] as const;
export type OriginFlag = (typeof ORIGIN_FLAGS)[number];

export interface MaterialOrigins {
  readonly name: string;
  /** null: nobody has said; none: said to come from none of them. */
  readonly origins: readonly OriginFlag[] | null;
  /** What its label name or botanical name tells of, whoever has said what. */
  readonly namedOrigins: readonly OriginFlag[];
}

export interface OriginAnswer {
  readonly flag: OriginFlag;
  /** `free`: every material's paper says that it does not come from it. Traces of other work are not judged. */
  readonly verdict: 'contains' | 'free' | 'unknown';
  /** Those that come from it, or those of which nobody has said. */
  readonly materials: readonly string[];
  /** Of those that come from it, the ones that only their name tells it of: nobody has said so yet, or their entry does not. */
  readonly byName: readonly string[];
}

/**
 * "Has it got nuts in?" by the origins that the suppliers' papers give and by what a material's own name tells: one that
 * comes from it decides, and a name counts until it is looked into, since whoever asks may be harmed. Else one that nobody
 * has said anything of leaves it unknown. Nothing in it at all is unknown too.
 */
export const answerOrigins = (materials: readonly MaterialOrigins[]): OriginAnswer[] =>
  ORIGIN_FLAGS.map((flag) => {
    const from = materials.filter(
      ({ origins, namedOrigins }) => origins?.includes(flag) || namedOrigins.includes(flag),
    );
    const byName = namesOf(from.filter(({ origins }) => !origins?.includes(flag)));
    if (from.length > 0) return { flag, verdict: 'contains', materials: namesOf(from), byName };
    const unsaid = namesOf(materials.filter(({ origins }) => origins === null));
    const isUnknown = unsaid.length > 0 || materials.length === 0;
    return { flag, verdict: isUnknown ? 'unknown' : 'free', materials: unsaid, byName: [] };
  });

const namesOf = (materials: readonly MaterialOrigins[]): string[] => [
  ...new Set(materials.map(({ name }) => name)),
];
