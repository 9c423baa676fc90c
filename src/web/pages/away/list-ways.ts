import type { AnswerOf } from '../../api/shapes.ts';

type Claim = Pick<AnswerOf<'listClaims'>[number], 'mayEnter'>;
export type Way = 'besides' | 'enter' | 'instead' | 'aside';

/** What may become of it; where something stands there already, that it was the same is the first thing to think of. */
export function listWays({ mayEnter }: Claim): readonly Way[] {
  if (mayEnter === null) return ['aside'];
  if (mayEnter.instead === null) return ['enter', 'aside'];
  return ['aside', 'instead', ...(mayEnter.isBesides ? (['besides'] as const) : [])];
}
