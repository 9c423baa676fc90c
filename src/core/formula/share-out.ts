/**
 * Shares out whole pieces by weight so that they add up to the pieces exactly: each gets its whole quotient, and what
 * is left goes, one piece each, to the largest remainders (Hamilton's method; equal remainders: the earlier first).
 */
export function shareOut(weights: readonly bigint[], pieces: bigint): bigint[] {
  const total = weights.reduce((sum, weight) => sum + weight, 0n);
  const shares = weights.map((weight) => (weight * pieces) / total);
  const remainders = weights.map((weight, index) => ({ index, rest: (weight * pieces) % total }));
  const left = Number(pieces - shares.reduce((sum, share) => sum + share, 0n));
  remainders.sort((one, other) => Number(other.rest > one.rest) - Number(other.rest < one.rest));
  for (const { index } of remainders.slice(0, left)) shares[index] = (shares[index] ?? 0n) + 1n;
  return shares;
}
