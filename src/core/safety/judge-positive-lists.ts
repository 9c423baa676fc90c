import type { Composition, Group } from './compose.ts';
import { type LimitVerdict, tellVerdict } from './limit-verdict.ts';
import { possibleRows } from './match.ts';
import { matchRows } from './match-rows.ts';
import { normaliseName } from './read-name.ts';
import type { Market } from './safety-table-rows.ts';
import type { SafetyTables } from './safety-tables.ts';
import { numbersOfSubstance, type Substance } from './substance.ts';
import type { RuleTold } from './told.ts';

/** What a material is put in for, where the law names all that may be. */
export const LISTED_FUNCTIONS = ['colourant', 'preservative', 'uv-filter'] as const;
export type ListedFunction = (typeof LISTED_FUNCTIONS)[number];

/** A material of the product with what it is for; `parts`: names of what is in it, which may be what does it. */
export interface FunctionTold {
  readonly name: string;
  readonly as: ListedFunction;
  readonly parts?: readonly string[];
}

/**
 * Colourants, preservatives and UV filters may be used only where Annexes IV, V and VI list them, as they list them:
 * Article 14(1)(c), (d) and (e) of Regulation (EC) No 1223/2009, for Great Britain as retained there. In the United States
 * a colour additive is listed in 21 CFR 73, 74 or 82, or the cosmetic is adulterated (sections 601(e) and 721 of the
 * Federal Food, Drug, and Cosmetic Act; from memory). So "no rule in the tables" is the opposite of harmless here.
 */
const RULES: Readonly<Record<ListedFunction, { readonly annex: string; readonly point: string }>> = {
  colourant: { annex: 'IV', point: 'c' },
  preservative: { annex: 'V', point: 'd' },
  'uv-filter': { annex: 'VI', point: 'e' },
};

const US_COLOURS = 'section 721 of the Federal Food, Drug, and Cosmetic Act; 21 CFR 73, 74 and 82';

/** "CI 77891 (Titanium Dioxide)": the name says that it colours. Names of colours outside Annex IV are found so too. */
const COLOUR_NUMBER = /^\s*ci\s+\d{5}(?::\d{1,2})?\b/i;

const isColourNumber = (name: string): boolean => COLOUR_NUMBER.test(name);

/** Where the market has a positive list for it; the United States have one of colours alone. */
function tellList(as: ListedFunction, market: Market): RuleTold | undefined {
  if (market === 'US')
    return as === 'colourant'
      ? { kind: 'law', source: US_COLOURS, citation: US_COLOURS, asWhat: 'colour additive' }
      : undefined;
  const { annex, point } = RULES[as];
  const citation = `Regulation (EC) No 1223/2009, Article 14(1)(${point}) and Annex ${annex}`;
  return { kind: 'law', source: citation, citation, asWhat: as === 'uv-filter' ? 'UV filter' : as };
}

type Reason = 'positive-list-not-in-tables' | 'conditions-not-in-tables';

/** What nothing in the tables answers; nothing where a row of the annex itself judges it. */
function reasonFor(
  tables: SafetyTables,
  market: Market,
  as: ListedFunction,
  substances: readonly Substance[],
): Reason | undefined {
  const { annex } = RULES[as];
  const isJudged = substances.some((substance) =>
    possibleRows(matchRows(tables, substance).restrictions).some(
      (row) => row.annex === annex && row.rules.some(({ markets }) => markets.includes(market)),
    ),
  );
  if (isJudged) return undefined;
  const isListed =
    as === 'colourant' && market !== 'US' && substances.some((one) => isListedColour(tables, one));
  return isListed ? 'conditions-not-in-tables' : 'positive-list-not-in-tables';
}

function isListedColour({ listedColours }: SafetyTables, substance: Substance): boolean {
  const { name, alsoNames = [] } = substance;
  const spelt = [name, ...alsoNames].map(normaliseName);
  const printed = spelt.flatMap((one) => [one, COLOUR_NUMBER.exec(one)?.[0] ?? one]);
  return [...printed, ...numbersOfSubstance(substance)].some((one) => listedColours.has(one));
}

type Named = Group<string>;

/** Told by the workshop, or by the name itself. A colour that is in a material as a part of it is asked for itself. */
function listFunctions(
  named: readonly Named[],
  told: readonly FunctionTold[],
): { readonly group: Named; readonly as: ListedFunction; readonly parts: readonly string[] }[] {
  return named.flatMap((group) => {
    const ofIt = told.filter(({ name }) => name === group.row);
    const asTold = ofIt
      .filter(({ as, parts = [] }) => as !== 'colourant' || !parts.some(isColourNumber))
      .map(({ as, parts = [] }) => ({ group, as, parts }));
    const isTold = asTold.some(({ as }) => as === 'colourant');
    return isColourNumber(group.row) && !isTold
      ? [...asTold, { group, as: 'colourant' as const, parts: [] }]
      : asTold;
  });
}

/** What is used as something that only listed substances may be, and that no row of the list answers: unknown. */
export function judgePositiveLists(
  tables: SafetyTables,
  market: Market,
  { named, members }: Composition,
  told: readonly FunctionTold[] = [],
): LimitVerdict[] {
  return listFunctions(named, told).flatMap(({ group, as, parts }) => {
    const list = tellList(as, market);
    const substances = members
      .map(({ of }) => of)
      .filter(({ name }) => name === group.row || parts.includes(name));
    const reason = list && reasonFor(tables, market, as, substances);
    if (list === undefined || reason === undefined || group.sum.near === 0) return [];
    return [tellVerdict(group.told, { verdict: 'unknown', reason }, list)];
  });
}
