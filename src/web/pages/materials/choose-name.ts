/**
 * What something is called at the bench: as it was typed. The table's name only where the typing broke off within one of
 * its words, since that was a search and no name.
 */
export function chooseName(typed: string, tabled: string): string {
  const own = typed.trim();
  const isBegun = tabled.toLowerCase().startsWith(own.toLowerCase());
  const isWhole = !/^\p{L}/u.test(tabled.slice(own.length));
  return own === '' || (isBegun && !isWhole) ? tabled : own;
}
