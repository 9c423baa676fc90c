import {
  type Contribution,
  mergeMaterials,
  type RollUpMaterial,
  rollUpContributions,
} from '../core/formula/index.ts';
import { done, type Result } from '../core/problem.ts';
import { normaliseName, readNameHints } from '../core/safety/index.ts';
import type { MaterialDetails, MaterialKind, OpenedRevision } from './checked.ts';
import { readCasNumbers } from './read-cas-numbers.ts';
import { type CertifiedLot, withCertificate } from './with-certificate.ts';

export interface CompositionParts extends Omit<OpenedRevision, 'contributions' | 'kinds'> {
  /** Lots that stand among the materials by themselves, by the id that each stands under. */
  readonly certified?: ReadonlyMap<string, CertifiedLot>;
}

/**
 * What its materials bring in, each told by the names that the workshop calls them. A lot with a certificate brings in
 * what that says, weighted by its own mass, and counts as its material for everything else.
 */
export function openComposition({
  certified = new Map(),
  ...parts
}: CompositionParts): Result<OpenedRevision> {
  const { materials, expanded } = parts;
  const materialOf = (id: string): string => certified.get(id)?.materialId ?? id;
  const kinds = new Map<string, MaterialKind>();
  for (const { materialId: id } of expanded.materials) {
    const known = materials.get(materialOf(id));
    if (known) kinds.set(id, kindOf(materialOf(id), known, certified.get(id)));
  }
  const contributions = rollUpContributions(
    expanded,
    new Map([...kinds].map(([id, { details }]) => [id, rollUpMaterial(id, details)])),
  );
  if (!contributions.ok) return contributions;
  return done({
    ...parts,
    expanded: certified.size === 0 ? expanded : mergeMaterials(expanded, materialOf),
    kinds: [...kinds.values()],
    contributions: tellByOwnNames(contributions.value, [...materials.values()]),
  });
}

const kindOf = (
  materialId: string,
  details: MaterialDetails,
  lot: CertifiedLot | undefined,
): MaterialKind => ({
  materialId,
  details: lot ? withCertificate(details, lot) : details,
  lot: lot ?? null,
});

/** The label name is the law's own and finds its rules; without one, the name on the tub has to do. */
export const nameLookedUp = (details: MaterialDetails): string =>
  details.inciEu === '' ? details.name : details.inciEu;

function rollUpMaterial(id: string, details: MaterialDetails): RollUpMaterial {
  const name = nameLookedUp(details);
  const numbers = ownNumbers(details);
  const also = alsoCalled(details);
  return {
    id,
    name,
    cas: numbers[0] ?? null,
    ...(also.length > 0 && { alsoNames: also }),
    ...(numbers.length > 0 && { alsoCas: numbers }),
    plantPart: details.plantPart,
    process: details.process,
    constituentOrigin: isBlend(details) ? 'added' : 'natural',
    constituents: details.constituents.map((one) => {
      const own = readCasNumbers(one.cas ?? '');
      return { ...one, cas: own[0] ?? null, ...(own.length > 0 && { alsoCas: own }) };
    }),
  };
}

/**
 * Every CAS number of the material itself: a paper often lists one of the plant, one of its oil and some of what is in
 * it. A number that one of its constituents carries is looked up there, with the amount that the paper gives, as long as
 * it gives one: of none, or where the material would be left without a name and a number that tables know, it stays.
 */
function ownNumbers(details: MaterialDetails): string[] {
  const itself = normaliseName(nameLookedUp(details));
  const parts = details.constituents.filter(
    ({ name, mostPercent }) =>
      normaliseName(name) !== itself && !(mostPercent !== null && Number(mostPercent) === 0),
  );
  const ofParts = new Set(parts.flatMap((one) => readCasNumbers(one.cas ?? '')));
  const numbers = [...new Set(details.cas.flatMap(readCasNumbers))];
  const own = numbers.filter((number) => !ofParts.has(number));
  return own.length === 0 && details.inciEu === '' ? numbers : own;
}

/** The name on the tub beside the label name, unless it is the name of a constituent, which is looked up there. */
function alsoCalled({ name, inciEu, constituents }: MaterialDetails): string[] {
  const isTold = [inciEu, ...constituents.map((one) => one.name)]
    .map(normaliseName)
    .includes(normaliseName(name));
  return inciEu === '' || isTold ? [] : [name];
}

/**
 * A material of which neither a field nor its label name says what plant it is of was mixed by somebody: what is in it
 * counts as added, which is the stricter rule. That holds whatever role it was given, or was forgotten to be given.
 */
function isBlend({ inciEu, botanical, plantPart, process }: MaterialDetails): boolean {
  const hints = readNameHints(normaliseName(inciEu));
  const isOfPlant = botanical !== '' || (plantPart ?? hints.plantPart) !== undefined;
  return !isOfPlant && (process ?? hints.process) === undefined;
}

function tellByOwnNames(
  contributions: readonly Contribution[],
  materials: readonly MaterialDetails[],
): Contribution[] {
  const called = new Map<string, string[]>();
  for (const details of materials) {
    const name = nameLookedUp(details);
    called.set(name, [...(called.get(name) ?? []), details.name]);
  }
  return contributions.map((one) => ({
    ...one,
    fromMaterials: one.fromMaterials.flatMap((name) => called.get(name) ?? [name]),
  }));
}
