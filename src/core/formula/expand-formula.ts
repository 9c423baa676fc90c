import { done, problem, type Result, refused } from '../problem.ts';
import type { Exact } from '../quantity/index.ts';
import type { FormulaLine } from './formula-line.ts';
import { readLines } from './read-lines.ts';
import { divideBy, greatestCommonDivisor, leastCommonMultiple } from './whole-ratio.ts';

/** One revision of a formula, as far as its composition goes. */
export interface FormulaRecipe {
  readonly formulaId: string;
  readonly name: string;
  readonly lines: readonly FormulaLine[];
}

export interface FormulaLookup {
  readonly revision: (revisionId: string) => FormulaRecipe | undefined;
  /** The revision of a base that is in force. */
  readonly base: (formulaId: string) => FormulaRecipe | undefined;
}

export interface MaterialShare {
  readonly materialId: string;
  /** So many of the whole's parts. */
  readonly parts: bigint;
  readonly percent: Exact;
}

/** What a formula comes to once its bases are opened: materials as shares of the finished product. */
export interface ExpandedFormula {
  readonly materials: readonly MaterialShare[];
  /** All parts together. */
  readonly whole: bigint;
}

/** A base within a base within a base ...: deeper than this is a slip, not a recipe (common practice, no source). */
const DEEPEST = 10;

interface Shares {
  readonly parts: ReadonlyMap<string, bigint>;
  readonly whole: bigint;
}

/** Opens bases depth first; a base met twice is opened once. */
class Expansion {
  readonly #lookup: FormulaLookup;
  readonly #opened = new Map<string, Shares>();

  constructor(lookup: FormulaLookup) {
    this.#lookup = lookup;
  }

  open(recipe: FormulaRecipe, path: readonly FormulaRecipe[]): Result<Shares> {
    const within = [...path, recipe];
    const weighed = readLines(recipe.lines);
    if (!weighed.ok) return weighed;
    const opened: (Shares | null)[] = [];
    for (const { item } of recipe.lines) {
      const base = item.kind === 'base' ? this.#openBase(item.formulaId, within) : done(null);
      if (!base.ok) return base;
      opened.push(base.value);
    }
    return done(mixShares(recipe.lines, weighed.value.micrograms, weighed.value.total, opened));
  }

  #openBase(formulaId: string, within: readonly FormulaRecipe[]): Result<Shares> {
    const known = this.#opened.get(formulaId);
    if (known) return done(known);
    const inside = within.at(-1)?.name ?? '';
    const loop = within.findIndex((recipe) => recipe.formulaId === formulaId);
    if (loop >= 0) {
      const names = [...within.slice(loop), within[loop]].map((recipe) => recipe?.name);
      return refused(problem('formula-contains-itself', inside, { found: names.join(' > ') }));
    }
    const base = this.#lookup.base(formulaId);
    if (base === undefined) return refused(problem('base-not-found', inside, { found: formulaId }));
    if (within.length >= DEEPEST) {
      return refused(problem('base-too-deep', inside, { found: within.length, allowed: DEEPEST }));
    }
    const shares = this.open(base, within);
    if (shares.ok) this.#opened.set(formulaId, shares.value);
    return shares;
  }
}

/** Brings every line onto one common denominator: total x the least common multiple of the bases' wholes. */
function mixShares(
  lines: readonly FormulaLine[],
  micrograms: readonly bigint[],
  total: bigint,
  opened: readonly (Shares | null)[],
): Shares {
  const common = opened.reduce((multiple, base) => leastCommonMultiple(multiple, base?.whole ?? 1n), 1n);
  const parts = new Map<string, bigint>();
  const add = (id: string, more: bigint) => parts.set(id, (parts.get(id) ?? 0n) + more);
  for (const [index, { item }] of lines.entries()) {
    const own = (micrograms[index] ?? 0n) * common;
    if (item.kind === 'material') add(item.id, own);
    const base = opened[index];
    if (base) for (const [id, share] of base.parts) add(id, (own / base.whole) * share);
  }
  return reduceShares({ parts, whole: total * common });
}

function reduceShares({ parts, whole }: Shares): Shares {
  let divisor = whole;
  for (const share of parts.values()) divisor = greatestCommonDivisor(divisor, share);
  return { parts: new Map([...parts].map(([id, share]) => [id, share / divisor])), whole: whole / divisor };
}

/**
 * Opens every base of a revision: percent by mass of each material in the finished product, exact, the same material
 * met twice added. Refuses an unknown revision, a missing base, and a base that contains itself, naming the loop.
 */
export function expandFormula(revisionId: string, lookup: FormulaLookup): Result<ExpandedFormula> {
  const recipe = lookup.revision(revisionId);
  if (recipe === undefined) return refused(problem('thing-not-found', 'revisionId', { found: revisionId }));
  const shares = new Expansion(lookup).open(recipe, []);
  if (!shares.ok) return shares;
  const { parts, whole } = shares.value;
  const toPercent = divideBy(whole);
  const materials = [...parts].map(([materialId, share]) => ({
    materialId,
    parts: share,
    percent: toPercent(share * 100n),
  }));
  return done({ materials, whole });
}
