import type { ExactInput, Quotient } from '../quantity/index.ts';
import type { Match, MatchDoubt } from './match.ts';
import { matchRows } from './match-rows.ts';
import { addPercents, type PercentSum, readPercent, toPercent } from './percent-sum.ts';
import { normaliseName } from './read-name.ts';
import type { AllergenRow, IfraRow, RestrictionRow } from './safety-table-rows.ts';
import type { SafetyTables, SubstanceMatches } from './safety-tables.ts';
import {
  type Contribution,
  numbersOfSubstance,
  type Provenance,
  type Substance,
  substanceKey,
} from './substance.ts';
import type { Told } from './told.ts';

/** A contribution whose percentage has been read, and whose rows have been found, once for all markets. */
export interface Member {
  readonly of: Substance & Provenance;
  readonly percent: PercentSum;
  readonly typical: PercentSum | undefined;
  /** What is told of it where nothing is added to it. */
  readonly told: Told;
}

/** Everything in the product that falls under one row. */
export interface Group<Row> {
  readonly row: Row;
  readonly members: readonly Member[];
  readonly sum: PercentSum;
  readonly told: Told;
}

export interface Doubt<Row> {
  readonly member: Member;
  readonly told: Told;
  readonly doubt: MatchDoubt;
  readonly mayBe: readonly Row[];
  readonly tellApartBy: readonly string[];
}

export interface Matched<Row> {
  readonly groups: readonly Group<Row>[];
  readonly doubts: readonly Doubt<Row>[];
}

export interface Composition {
  readonly members: readonly Member[];
  /** Members of one name, for what no rule speaks of. */
  readonly named: readonly Group<string>[];
  readonly allergens: Matched<AllergenRow>;
  readonly restrictions: Matched<RestrictionRow>;
  readonly ifra: Matched<IfraRow>;
  /** Members that no allergen entry lists. */
  readonly withoutEntry: readonly Group<string>[];
}

/** Strongest first. */
const CONFIDENCES = ['report', 'supplier', 'read', 'read-secondary', 'computed', 'derived', 'memory'];

function weakestConfidence(members: readonly Member[]): string | undefined {
  let weakest = -1;
  for (const { of } of members) {
    if (of.confidence !== undefined) weakest = Math.max(weakest, CONFIDENCES.indexOf(of.confidence));
  }
  return CONFIDENCES[weakest];
}

function nameOf(names: readonly string[], ruleName: string): string {
  const [first = ruleName] = names;
  const isOne = names.length < 2 || new Set(names.map(normaliseName)).size === 1;
  return isOne ? first : ruleName;
}

/** Fields are set one by one, not spread: a composition is checked while it is typed (see tellVerdict). */
type ToldSoFar = { -readonly [Key in keyof Told]: Told[Key] };

function readMember(of: Substance & Provenance, given: ExactInput | Quotient): Member {
  const { name, typicalPercent, confidence, fromMaterials } = of;
  const percent = readPercent(given);
  const told: ToldSoFar = { name, percent: toPercent(percent), members: [name] };
  const typical = typicalPercent === undefined ? undefined : readPercent(typicalPercent);
  if (typical !== undefined) told.typicalPercent = toPercent(typical);
  if (confidence !== undefined) told.amountConfidence = confidence;
  if (fromMaterials !== undefined) told.fromMaterials = fromMaterials;
  const numbers = numbersOfSubstance(of);
  if (numbers.length > 0) told.numbers = numbers;
  return { of, percent, typical, told };
}

function tellTogether(members: readonly Member[], sum: PercentSum, ruleName: string): Told {
  const names = new Set<string>();
  const materials = new Set<string>();
  const typical: PercentSum[] = [];
  for (const member of members) {
    names.add(member.of.name);
    if (member.typical !== undefined) typical.push(member.typical);
    for (const material of member.of.fromMaterials ?? []) materials.add(material);
  }
  const list = [...names];
  const told: ToldSoFar = { name: nameOf(list, ruleName), percent: toPercent(sum), members: list };
  if (typical.length === members.length) told.typicalPercent = toPercent(addPercents(typical));
  const confidence = weakestConfidence(members);
  if (confidence !== undefined) told.amountConfidence = confidence;
  if (materials.size > 0) told.fromMaterials = [...materials];
  return told;
}

export function groupMembers<Row>(row: Row, ruleName: string, members: readonly Member[]): Group<Row> {
  const [only] = members;
  if (only !== undefined && members.length === 1) return { row, members, sum: only.percent, told: only.told };
  const sum = addPercents(members.map(({ percent }) => percent));
  return { row, members, sum, told: tellTogether(members, sum, ruleName) };
}

function push<Key>(map: Map<Key, Member[]>, key: Key, member: Member): void {
  const list = map.get(key);
  if (list === undefined) map.set(key, [member]);
  else list.push(member);
}

type Doubtful<Row> = Match<Row> & { readonly kind: 'unknown' };

function tellDoubtful<Row>({
  match,
  members,
}: {
  readonly match: Doubtful<Row>;
  readonly members: readonly Member[];
}): Doubt<Row>[] {
  const [member] = members;
  if (member === undefined) return [];
  const { doubt, mayBe, tellApartBy } = match;
  const { told } = groupMembers(member.of.name, member.of.name, members);
  const { numbers } = member.told;
  const whole = numbers === undefined || members.length === 1 ? told : { ...told, numbers };
  return [{ member, told: whole, doubt, mayBe, tellApartBy }];
}

/** The members of one table, by row. */
class Sorting<Row> {
  readonly #byRow = new Map<Row, Member[]>();
  /** By substance: one that comes in two parts is in doubt once, with all of it. */
  readonly #doubts = new Map<string, { readonly match: Doubtful<Row>; readonly members: Member[] }>();

  sort(member: Member, match: Match<Row>): void {
    for (const row of match.rows) push(this.#byRow, row, member);
    if (match.kind === 'unknown') this.#doubt(member, match);
  }

  #doubt(member: Member, match: Doubtful<Row>): void {
    const key = substanceKey(member.of);
    const known = this.#doubts.get(key);
    if (known === undefined) this.#doubts.set(key, { match, members: [member] });
    else known.members.push(member);
  }

  matched(nameOfRow: (row: Row) => string): Matched<Row> {
    const groups = [...this.#byRow].map(([row, members]) => groupMembers(row, nameOfRow(row), members));
    return { groups, doubts: [...this.#doubts.values()].flatMap(tellDoubtful) };
  }
}

const isWithoutRows = ({ allergens }: SubstanceMatches): boolean =>
  allergens.kind === 'rows' && allergens.rows.length === 0;

const groupsOf = (byName: ReadonlyMap<string, readonly Member[]>): Group<string>[] =>
  [...byName].map(([name, members]) => groupMembers(name, name, members));

export const percentOfContribution = ({ percent }: Contribution): ExactInput => percent;

/** Reads and sorts a composition once; markets, uses and dates are judged on it after that. */
export function composeContributions<Given extends Substance & Provenance>(
  tables: SafetyTables,
  contributions: readonly Given[],
  percentOf: (contribution: Given) => ExactInput | Quotient,
): Composition {
  const allergens = new Sorting<AllergenRow>();
  const restrictions = new Sorting<RestrictionRow>();
  const ifra = new Sorting<IfraRow>();
  const named = new Map<string, Member[]>();
  const withoutEntry = new Map<string, Member[]>();
  const members = contributions.map((of): Member => {
    const member = readMember(of, percentOf(of));
    const matches = matchRows(tables, of);
    allergens.sort(member, matches.allergens);
    restrictions.sort(member, matches.restrictions);
    ifra.sort(member, matches.ifra);
    push(named, of.name, member);
    if (isWithoutRows(matches)) push(withoutEntry, of.name, member);
    return member;
  });
  return {
    members,
    named: groupsOf(named),
    allergens: allergens.matched(({ labelName }) => labelName),
    restrictions: restrictions.matched(({ name }) => name),
    ifra: ifra.matched(({ name }) => name),
    withoutEntry: groupsOf(withoutEntry),
  };
}
