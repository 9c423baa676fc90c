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
  /** Those whose name tells of it although their entry does not: which of the two is right is not known. */
  readonly byName: readonly string[];
}

/**
 * "Has it got nuts in?" by the origins that the suppliers' papers give: one material that comes from it decides; else one
 * that nobody has said anything of leaves it unknown, and so does one whose own name tells of it. Nothing in it at all
 * is unknown too.
 */
export const answerOrigins = (materials: readonly MaterialOrigins[]): OriginAnswer[] =>
  ORIGIN_FLAGS.map((flag) => {
    const from = namesOf(materials.filter(({ origins }) => origins?.includes(flag)));
    if (from.length > 0) return { flag, verdict: 'contains', materials: from, byName: [] };
    const unsaid = namesOf(materials.filter(({ origins }) => origins === null));
    const byName = namesOf(
      materials.filter(({ origins, namedOrigins }) => origins !== null && namedOrigins.includes(flag)),
    );
    const isUnknown = unsaid.length + byName.length > 0 || materials.length === 0;
    return { flag, verdict: isUnknown ? 'unknown' : 'free', materials: unsaid, byName };
  });

const namesOf = (materials: readonly MaterialOrigins[]): string[] => [
  ...new Set(materials.map(({ name }) => name)),
];
