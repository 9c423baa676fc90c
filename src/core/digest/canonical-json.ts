/** JSON with sorted keys and without undefined: the same data give the same text, hence the same hash. */
export function canonicalJson(value: unknown): string {
  return JSON.stringify(value, (_key, part: unknown) => {
    if (typeof part !== 'object' || part === null || Array.isArray(part)) return part;
    return Object.fromEntries(Object.entries(part).sort(([one], [other]) => (one < other ? -1 : 1)));
  });
}
