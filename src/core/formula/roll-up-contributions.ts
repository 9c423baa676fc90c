import { done, type Problem, problem, type Result, refused } from '../problem.ts';
import { Quotient } from '../quantity/index.ts';
import type { ExpandedFormula } from './expand-formula.ts';
import { type ConstituentRange, PARTS_PER_PERCENT, readRange } from './read-range.ts';
import { divideBy } from './whole-ratio.ts';

/** Strongest first: the assessor's report, the supplier's paper, then as the reference tables rank their sources. */
const CONFIDENCES = [
  'report',
  'supplier',
  'read',
  'read-secondary',
  'computed',
  'derived',
  'memory',
] as const;
export type ContributionConfidence = (typeof CONFIDENCES)[number];
export type ContributionOrigin = 'natural' | 'added';

/** One constituent as the supplier's paper or a table gives it: percent by mass of the material. */
export interface MaterialConstituent extends ConstituentRange {
  readonly cas?: string | null;
  /** CAS numbers that are looked up whatever the name says. */
  readonly alsoCas?: readonly string[];
  readonly confidence: ContributionConfidence;
}

export interface RollUpMaterial {
  readonly id: string;
  /** Under which it is looked up: mostly its label name. */
  readonly name: string;
  readonly cas?: string | null;
  /** Other names, and CAS numbers, that are looked up whatever the name says. */
  readonly alsoNames?: readonly string[];
  readonly alsoCas?: readonly string[];
  readonly plantPart?: string | null;
  readonly process?: string | null;
  /** How its constituents got into it: `natural` [default], or `added` where they were mixed in (a scent blend). */
  readonly constituentOrigin?: ContributionOrigin;
  readonly constituents: readonly MaterialConstituent[];
}

/** A substance of the finished product, in percent by mass, added up over everything that brings it in. */
export interface Contribution {
  readonly name: string;
  readonly cas?: string | undefined;
  readonly alsoNames?: readonly string[] | undefined;
  readonly alsoCas?: readonly string[] | undefined;
  readonly plantPart?: string | undefined;
  readonly process?: string | undefined;
  readonly origin: ContributionOrigin;
  readonly leastPercent: Quotient;
  readonly typicalPercent: Quotient;
  readonly mostPercent: Quotient;
  /** The weakest of its sources. */
  readonly confidence: ContributionConfidence;
  /** Names of the materials that bring it in. */
  readonly fromMaterials: readonly string[];
}

type Substance = Pick<RollUpMaterial, 'name' | 'cas' | 'alsoNames' | 'alsoCas' | 'plantPart' | 'process'>;

const listKey = (more: readonly string[] | undefined): string => (more === undefined ? '' : more.join('+'));

/** One row while it is added up: whole parts, `toPercent` at the end. */
class Sum {
  readonly #substance: Substance;
  readonly #origin: ContributionOrigin;
  readonly #from = new Set<string>();
  #least = 0n;
  #typical = 0n;
  #most = 0n;
  #confidence = 0;

  constructor(substance: Substance, origin: ContributionOrigin) {
    this.#substance = substance;
    this.#origin = origin;
  }

  add(from: string, confidence: ContributionConfidence, least: bigint, typical: bigint, most: bigint): void {
    this.#from.add(from);
    this.#least += least;
    this.#typical += typical;
    this.#most += most;
    this.#confidence = Math.max(this.#confidence, CONFIDENCES.indexOf(confidence));
  }

  /** Written out field by field: spreading parts of changing shape took half the time of a roll-up. */
  toContribution(toPercent: (parts: bigint) => Quotient): Contribution {
    const typical = toPercent(this.#typical);
    return {
      name: this.#substance.name,
      cas: this.#substance.cas || undefined,
      alsoNames: this.#substance.alsoNames,
      alsoCas: this.#substance.alsoCas,
      plantPart: this.#substance.plantPart || undefined,
      process: this.#substance.process || undefined,
      origin: this.#origin,
      leastPercent: this.#least === this.#typical ? typical : toPercent(this.#least),
      typicalPercent: typical,
      mostPercent: this.#most === this.#typical ? typical : toPercent(this.#most),
      confidence: CONFIDENCES[this.#confidence] ?? 'memory',
      fromMaterials: [...this.#from],
    };
  }
}

class RollUp {
  readonly sums = new Map<string, Sum>();
  readonly problems: Problem[] = [];

  addMaterial(material: RollUpMaterial, parts: bigint): void {
    const whole = parts * 100n * PARTS_PER_PERCENT;
    const own = normalise(material.name);
    const itself = material.constituents.filter(({ name }) => normalise(name) === own);
    const substance = itself.length === 0 ? material : withNumbersOf(material, itself);
    this.#sumOf(substance, 'added').add(material.name, 'computed', whole, whole, whole);
    for (const constituent of material.constituents) {
      if (normalise(constituent.name) !== own) this.#addConstituent(material, constituent, parts);
    }
  }

  #addConstituent(material: RollUpMaterial, constituent: MaterialConstituent, parts: bigint): void {
    const range = readRange(constituent);
    if (!range.ok) {
      this.problems.push(...range.problems.map((found) => ({ ...found, where: material.name })));
      return;
    }
    const { least, typical, most } = range.value;
    this.#sumOf(constituent, material.constituentOrigin ?? 'natural').add(
      material.name,
      constituent.confidence,
      parts * least,
      parts * typical,
      parts * most,
    );
  }

  #sumOf(substance: Substance, origin: ContributionOrigin): Sum {
    const { name, cas, plantPart, process, alsoNames, alsoCas } = substance;
    const key = `${normalise(name)}|${cas ?? ''}|${plantPart ?? ''}|${process ?? ''}|${origin}|${listKey(alsoNames)}|${listKey(alsoCas)}`;
    const known = this.sums.get(key);
    if (known) return known;
    const sum = new Sum(substance, origin);
    this.sums.set(key, sum);
    return sum;
  }
}

const normalise = (name: string): string => name.trim().toLowerCase();

/** A pure substance may list itself as what is in it: it is there already, and what its paper numbers is the substance. */
function withNumbersOf(material: RollUpMaterial, itself: readonly MaterialConstituent[]): RollUpMaterial {
  const told = itself.flatMap(({ cas, alsoCas = [] }) => [...(cas ? [cas] : []), ...alsoCas]);
  const numbers = [...new Set([...(material.alsoCas ?? []), ...told])];
  return numbers.length === 0 ? material : { ...material, cas: material.cas || numbers[0], alsoCas: numbers };
}

/**
 * Adds up what every material brings into the finished product: percent of the substance = sum over the materials of
 * percent of the material x percent of the substance in it / 100, for the least, the typical and the most.
 *
 * The material itself is a contribution too, since some rules name it (phototoxic oils, extracts as allergens). Rows are
 * one by name, CAS number, plant part, process and origin; which of them fall under one rule is for `safety` to say.
 * Exact: sums are whole numbers over one denominator, divided where it is asked for (see whole-ratio).
 */
export function rollUpContributions(
  formula: ExpandedFormula,
  materials: ReadonlyMap<string, RollUpMaterial>,
): Result<Contribution[]> {
  const rollUp = new RollUp();
  for (const { materialId, parts } of formula.materials) {
    const material = materials.get(materialId);
    if (material) rollUp.addMaterial(material, parts);
    else rollUp.problems.push(problem('thing-not-found', 'materialId', { found: materialId }));
  }
  if (rollUp.problems.length > 0) return refused(...rollUp.problems);
  const whole = formula.whole * PARTS_PER_PERCENT;
  const divide = divideBy(whole);
  const toPercent = (parts: bigint): Quotient => new Quotient(parts, whole, divide);
  return done([...rollUp.sums.values()].map((sum) => sum.toContribution(toPercent)));
}
