/** An address as the workshop gives it, `/#buy`, as a link wants it: the page, and the part of the page. */
export function splitHash(address: string): { readonly to: string; readonly hash?: string } {
  const at = address.indexOf('#');
  return at === -1 ? { to: address } : { to: address.slice(0, at), hash: address.slice(at + 1) };
}
