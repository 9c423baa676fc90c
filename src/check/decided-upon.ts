import { canonicalJson, digestOfText } from '../core/digest/index.ts';
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
  /** Canonical. */
  readonly text: string;
}

/** Looks up what a decision on something would be taken upon; many unknowns come from the same few materials. */
export interface DecisionGrounds {
  /** `names`: what the workshop calls the materials that bring the unknown thing in. */
  readonly of: (names: readonly string[]) => Grounds;
}

export interface Grounds {
  readonly upon: readonly DecidedUpon[];
  /** Short, so that it can be kept and compared for each unknown of each market. */
  readonly digest: string;
}

const known = new WeakMap<OpenedRevision, DecisionGrounds>();

/** One check asks many times, of one opened revision: each material is told once, and each digest worked out once. */
export function groundsOf(opened: OpenedRevision): DecisionGrounds {
  const before = known.get(opened);
  if (before) return before;
  const grounds = rememberGrounds(describeMaterials(opened));
  known.set(opened, grounds);
  return grounds;
}

function rememberGrounds(described: readonly Described[]): DecisionGrounds {
  const worked = new Map<string, Grounds>();
  return {
    of(names) {
      const key = JSON.stringify(names);
      const before = worked.get(key);
      if (before) return before;
      const from = described.filter(({ name }) => names.includes(name));
      // A list in canonical JSON is the texts of its members with commas between.
      const digest = digestOfText(`[${from.map(({ text }) => text).join(',')}]`);
      const grounds = { upon: from.map(({ upon }) => upon), digest };
      worked.set(key, grounds);
      return grounds;
    },
  };
}

/** In the order of their texts, whatever the order of the lines. */
const describeMaterials = ({ expanded, materials }: OpenedRevision): readonly Described[] =>
  expanded.materials
    .flatMap(({ materialId, percent }) => {
      const details = materials.get(materialId);
      if (!details) return [];
      const { upon, textWith } = describeOnce(details);
      const share = toText(percent);
      return [{ name: details.name, upon: { percent: share, ...upon }, text: textWith(share) }];
    })
    .sort(byText);

const byText = (one: { readonly text: string }, other: { readonly text: string }): number =>
  one.text < other.text ? -1 : 1;

interface ToldMaterial {
  readonly upon: Omit<DecidedUpon, 'percent'>;
  /** The canonical text of all of it with this share: its keys are in the order of the alphabet. */
  readonly textWith: (percent: string) => string;
}

const told = new WeakMap<MaterialDetails, ToldMaterial>();

/** While somebody types, the shares change and the materials do not. */
function describeOnce(details: MaterialDetails): ToldMaterial {
  const before = told.get(details);
  if (before) return before;
  const upon = describe(details);
  const constituents = canonicalJson(upon.constituents);
  const material = canonicalJson(upon.material);
  const textWith = (percent: string): string =>
    `{"constituents":${constituents},"material":${material},"percent":${JSON.stringify(percent)}}`;
  told.set(details, { upon, textWith });
  return { upon, textWith };
}

function describe(details: MaterialDetails): Omit<DecidedUpon, 'percent'> {
  const { name, supplier, inciEu, botanical, cas, plantPart, process, role, constituentsAre } = details;
  return {
    material: { name, supplier, inciEu, botanical, cas, plantPart, process, role, constituentsAre },
    constituents: details.constituents
      .map(({ source: _source, confidence: _confidence, ...rest }) => ({ rest, text: canonicalJson(rest) }))
      .sort(byText)
      .map(({ rest }) => rest),
  };
}
