import { canonicalJson } from '../core/digest/index.ts';
import { toText } from '../core/quantity/index.ts';
import type { MaterialDetails, OpenedRevision } from './checked.ts';

/**
 * What a decision on an unknown was taken upon: of every material that brings the unknown thing in
 *
 * - its share of the finished product, exact, bases opened by the revision in force;
 * - who it is: names, supplier, CAS numbers, plant, part of it, process, role;
 * - what its paper says is in it: each constituent with name, CAS number and range, and whether that is everything.
 *
 * Any of that may be why somebody decided as they did, so where it differs the decision no longer counts and the
 * question is open again. Left out, since they change nothing about the thing: the product's other materials, prices,
 * packs, cautions, density, origins, the order of the constituents, and in which words a paper is cited. How the
 * product is used belongs to the revision, which is not rewritten once somebody decided on it.
 */
export interface DecidedUpon {
  readonly percent: string;
  readonly material: Readonly<Record<string, unknown>>;
  readonly constituents: readonly Readonly<Record<string, unknown>>[];
}

interface Described {
  readonly name: string;
  readonly upon: DecidedUpon;
  readonly text: string;
}

/** Every material of it, described once and in the order of their texts: many unknowns ask for the same few. */
export const describeMaterials = ({ expanded, materials }: OpenedRevision): readonly Described[] =>
  expanded.materials
    .flatMap(({ materialId, percent }) => {
      const details = materials.get(materialId);
      if (!details) return [];
      const upon = describe(details, toText(percent));
      return [{ name: details.name, upon, text: canonicalJson(upon) }];
    })
    .sort(byText);

/** `names`: what the workshop calls the materials that bring the unknown thing in. */
export const readDecidedUpon = (described: readonly Described[], names: readonly string[]): DecidedUpon[] =>
  described.filter(({ name }) => names.includes(name)).map(({ upon }) => upon);

const byText = (one: { readonly text: string }, other: { readonly text: string }): number =>
  one.text < other.text ? -1 : 1;

function describe(details: MaterialDetails, percent: string): DecidedUpon {
  const { name, supplier, inciEu, botanical, cas, plantPart, process, role, constituentsAre } = details;
  return {
    percent,
    material: { name, supplier, inciEu, botanical, cas, plantPart, process, role, constituentsAre },
    constituents: details.constituents
      .map(({ source: _source, confidence: _confidence, ...rest }) => ({ rest, text: canonicalJson(rest) }))
      .sort(byText)
      .map(({ rest }) => rest),
  };
}
