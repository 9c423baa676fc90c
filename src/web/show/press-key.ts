export type Key = '0' | '1' | '2' | '3' | '4' | '5' | '6' | '7' | '8' | '9' | '.' | 'rub-out';

/** More digits than any scale shows are a stuck key (common practice, no source). */
const MOST_SIGNS = 12;

/** What stands in the display after a key. */
export function pressKey(typed: string, key: Key): string {
  if (key === 'rub-out') return typed.slice(0, -1);
  if (typed.length >= MOST_SIGNS) return typed;
  if (key === '.') return typed.includes('.') ? typed : `${typed === '' ? '0' : typed}.`;
  return typed === '0' ? key : typed + key;
}
