import { buildSafetyTables, type KnownMaterialRow, type SafetyTables } from '../core/safety/index.ts';
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
  built = buildSafetyTables({
    allergens: fragranceAllergens,
    restrictions: restrictedSubstances,
    ifra: ifraLimits,
    sharedCas: [...allergenCasTraps, ...inciCasTraps],
    materials: listKnownMaterials(),
    listedColours: inciNames
      .filter(({ group, inciEu }) => group === 'colourant' && inciEu.startsWith('CI '))
      .map(({ name, inciEu, inciUs = inciEu, cas }) => ({ names: [name, inciEu, inciUs], cas })),
    substances: essentialOils.flatMap(({ constituents }) =>
      constituents.flatMap(({ name, cas }) => (cas === undefined ? [] : [{ name, cas: [cas] }])),
    ),
  });
  return built;
}

/** What an oil's row and a label name both print is described more fully by the oil: plant part, process, allergen entry. */
function listKnownMaterials(): KnownMaterialRow[] {
  const inciById = new Map(inciNames.map((row) => [row.id, row]));
  const namesOf = ({ name, inciUs = '' }: (typeof inciNames)[number]): string[] =>
    [name, inciUs].filter(Boolean);
  const oils = essentialOils.map((oil): KnownMaterialRow => {
    const inci = inciById.get(oil.inciNameId ?? '');
    return inci === undefined ? oil : { ...oil, aliases: [...oil.aliases, ...namesOf(inci)] };
  });
  const asOil = new Set(essentialOils.map(({ inciNameId }) => inciNameId));
  const others = inciNames.filter(({ id }) => !asOil.has(id));
  return [...oils, ...others.map((inci) => ({ ...inci, aliases: namesOf(inci) }))];
}
