/** A thing with its name and other spellings; a lower rank comes first among equals. */
export interface Searchable {
  readonly key: string;
  readonly name: string;
  readonly alsoCalled: readonly string[];
  readonly rank: number;
}

/** Without accents and case, so that cupuaçu is found by cupuacu. */
const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().trim();

/**
 * Things of which one spelling holds every word typed: those called exactly so first, then those that begin so, in the
 * order of the tables. Nothing typed finds nothing.
 */
export function searchNames<Thing extends Searchable>(things: readonly Thing[], typed: string): Thing[] {
  const like = plain(typed);
  if (like === '') return [];
  return things
    .map((thing) => ({ thing, score: scoreOf(thing, like) }))
    .filter(({ score }) => score < NOT_FOUND)
    .sort((one, other) => one.score - other.score || one.thing.rank - other.thing.rank)
    .map(({ thing }) => thing);
}

const NOT_FOUND = 4;

function scoreOf(thing: Searchable, like: string): number {
  const names = [thing.name, ...thing.alsoCalled].map(plain);
  const words = like.split(/\s+/);
  if (names.includes(like)) return 0;
  if (names.some((name) => name.startsWith(like))) return 1;
  if (names.some((name) => name.includes(like))) return 2;
  return names.some((name) => words.every((word) => name.includes(word))) ? 3 : NOT_FOUND;
}
