import type { PaperRequest } from './list-requests.ts';

const joined = (one: readonly string[], other: readonly string[]): string[] => [
  ...new Set([...one, ...other]),
];

const join = (one: PaperRequest, other: PaperRequest): PaperRequest => ({
  material: one.material,
  substances: joined(one.substances, other.substances),
  asksComposition: one.asksComposition || other.asksComposition,
  ifraCategories: joined(one.ifraCategories, other.ifraCategories),
  asksPeroxide: one.asksPeroxide || other.asksPeroxide,
  figures: joined(one.figures, other.figures),
  asksAllergens: one.asksAllergens || other.asksAllergens,
  asksIdentity: one.asksIdentity || other.asksIdentity,
  asksOrigins: one.asksOrigins || other.asksOrigins,
});

/** One request for each material, however many formulas ask it. */
export function joinRequests(requests: readonly PaperRequest[]): PaperRequest[] {
  const byName = new Map<string, PaperRequest>();
  for (const request of requests) {
    const key = `${request.material.supplier}|${request.material.name}`;
    const known = byName.get(key);
    byName.set(key, known ? join(known, request) : request);
  }
  return [...byName.values()];
}
