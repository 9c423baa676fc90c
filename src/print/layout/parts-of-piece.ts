import type { PieceLayout } from './piece-layout.ts';
import type { Part, Placed } from './placed.ts';

/** Everything of one element is one paragraph for a reader; what is drawn is a picture with its words. */
export function partsOfPiece({ items, alts }: PieceLayout): Map<string, Part> {
  const shown = items.filter(({ kind, tone }) => kind !== 'rule' && tone !== 'paper');
  return new Map(
    [...new Set(shown.map(({ element }) => element))].map((element) => {
      const alt = alts[element];
      const part: Part =
        alt === undefined ? { type: 'P', children: [] } : { type: 'Figure', alt, children: [] };
      return [element, part];
    }),
  );
}

export const withParts = (items: readonly Placed[], parts: ReadonlyMap<string, Part>): Placed[] =>
  items.map((item) => {
    const part = parts.get(item.element);
    return part === undefined ? item : { ...item, part };
  });
