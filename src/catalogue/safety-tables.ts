import { buildSafetyTables, type SafetyTables } from '../core/safety/index.ts';
import {
  allergenCasTraps,
  essentialOils,
  fragranceAllergens,
  ifraLimits,
  inciCasTraps,
  inciNames,
  restrictedSubstances,
} from '../reference/index.ts';

let built: SafetyTables | undefined;

/** The published tables bound for judging; their index is built once, on first use. */
export function boundSafetyTables(): SafetyTables {
  if (built !== undefined) return built;
  // A name that an oil's row carries too is described more fully there: plant part, process, allergen entry.
  const describedAsOil = new Set(essentialOils.map(({ inciNameId }) => inciNameId));
  built = buildSafetyTables({
    allergens: fragranceAllergens,
    restrictions: restrictedSubstances,
    ifra: ifraLimits,
    sharedCas: [...allergenCasTraps, ...inciCasTraps],
    materials: [...essentialOils, ...inciNames.filter(({ id }) => !describedAsOil.has(id))],
  });
  return built;
}
