import {
  type Composition,
  composeContributions,
  type Doubt,
  type Group,
  groupMembers,
  type Member,
  percentOfContribution,
} from './compose.ts';
import { type MatchDoubt, possibleRows } from './match.ts';
import { matchRows } from './match-rows.ts';
import { comparePercent, picopercentFrom } from './percent-sum.ts';
import { normaliseName } from './read-name.ts';
import type { AllergenRow, Market, Use } from './safety-table-rows.ts';
import type { SafetyTables } from './safety-tables.ts';
import { type Contribution, numbersOfSubstance, type Substance } from './substance.ts';
import type { Told } from './told.ts';

export interface NamingContext {
  readonly market: Market;
  readonly use: Use;
  /** Day on which the first unit is placed on the market. */
  readonly firstSupplied: string;
  /** Last day on which a unit is made available, where it is known. */
  readonly lastSupplied?: string;
}

export interface NamingInput extends NamingContext {
  readonly contributions: readonly Contribution[];
}

export interface NamedAllergen extends Omit<Told, 'name'> {
  readonly labelName: string;
  readonly thresholdPercent: number;
  /** Entry number in Annex III. */
  readonly entry: number;
  readonly confidence: string;
}

/** Under the entry's label name, or the input's where no entry lists it. */
export interface NotNamed extends Told {
  readonly thresholdPercent?: number;
  readonly entry?: number;
  readonly reason:
    | 'not-over-threshold'
    | 'not-yet-required'
    | 'not-listed-in-market'
    | 'no-duty-in-market'
    | 'no-entry';
  /** With `not-yet-required`: first day on which a unit placed on the market must name it. */
  readonly requiredForPlacingFrom?: string;
}

export interface NamingUnknown {
  readonly name: string;
  readonly percent: number;
  readonly numbers: readonly string[];
  readonly reason: MatchDoubt | 'amount-not-known';
  /** Label names that it may have to be named as. */
  readonly mayBe: readonly string[];
  readonly tellApartBy: readonly string[];
}

export interface NamingAnswer {
  readonly named: readonly NamedAllergen[];
  readonly notNamed: readonly NotNamed[];
  readonly unknown: readonly NamingUnknown[];
}

/** CAS numbers of an entry that a substance can stand for: its own where it has one, else those of its name. */
function numbersOf(row: AllergenRow, substance: Substance): readonly string[] {
  const given = numbersOfSubstance(substance).filter((cas) => row.match.cas.includes(cas));
  if (given.length > 0) return given;
  const { name } = substance;
  const own = normaliseName(name);
  if (own === normaliseName(row.labelName)) return row.match.cas;
  return row.members.find((member) => normaliseName(member.name) === own)?.cas ?? row.match.cas;
}

type Duty = 'required' | 'not-yet-required' | 'not-listed-in-market' | 'no-duty-in-market';

/**
 * Required for a unit placed on the market from the first date on, and for every unit still made available from the
 * second date on (Regulation (EU) 2023/1545, article 1 and recitals: each unit by its own day of first supply).
 */
const isRequired = (
  dates: Pick<AllergenRow, 'requiredForPlacingFrom' | 'requiredForMakingAvailableFrom'>,
  { firstSupplied, lastSupplied = firstSupplied }: NamingContext,
): boolean =>
  firstSupplied >= dates.requiredForPlacingFrom || lastSupplied >= dates.requiredForMakingAvailableFrom;

/**
 * The duty that all members of an entry share; none where it depends on their CAS numbers. The United States have no
 * federal list in force: the rule proposed under MoCRA was still awaited (Unified Agenda, RIN 0910-AI90).
 */
function sharedDuty(row: AllergenRow, context: NamingContext): Duty | undefined {
  if (context.market === 'US') return 'no-duty-in-market';
  if (context.market === 'GB') return row.gb.listed ? undefined : 'not-listed-in-market';
  if (row.newMembers !== undefined) return undefined;
  return isRequired(row, context) ? 'required' : 'not-yet-required';
}

function dutyOf(row: AllergenRow, substance: Substance, context: NamingContext): Duty {
  const shared = sharedDuty(row, context);
  if (shared !== undefined) return shared;
  const numbers = numbersOf(row, substance);
  if (context.market === 'GB') {
    const scope = row.gb.cas ?? [];
    return numbers.some((cas) => scope.includes(cas)) ? 'required' : 'not-listed-in-market';
  }
  const { newMembers } = row;
  const isNew = newMembers !== undefined && numbers.every((cas) => newMembers.cas.includes(cas));
  return isRequired(isNew ? newMembers : row, context) ? 'required' : 'not-yet-required';
}

/** Groups of one entry's members by their duty; nearly always there is but one. */
function splitByDuty(
  group: Group<AllergenRow>,
  context: NamingContext,
): ReadonlyMap<Duty, Group<AllergenRow>> {
  const { row, members } = group;
  const shared = sharedDuty(row, context);
  const duties = shared === undefined ? members.map(({ of }) => dutyOf(row, of, context)) : [shared];
  const [first = 'required'] = duties;
  if (duties.every((duty) => duty === first)) return new Map([[first, group]]);
  return new Map(
    [...new Set(duties)].map((duty) => [
      duty,
      groupMembers(
        row,
        row.labelName,
        members.filter((_, index) => duties[index] === duty),
      ),
    ]),
  );
}

const thresholdOf = (row: AllergenRow, use: Use): number =>
  use === 'rinse-off' ? row.thresholdRinseOffPercent : row.thresholdLeaveOnPercent;

/** Object.assign as for verdicts: naming is worked out while a formula is typed. */
const tellNotNamed = (told: Told, rest: Omit<NotNamed, keyof Told>, name = told.name): NotNamed =>
  Object.assign({}, told, rest, { name });

/** Members with the duty are added together; what the market or the date leaves out is listed apart. */
function nameEntry(
  group: Group<AllergenRow>,
  context: NamingContext,
  named: NamedAllergen[],
  notNamed: NotNamed[],
): void {
  const { row } = group;
  const { entry, labelName } = row;
  const thresholdPercent = thresholdOf(row, context.use);
  for (const [duty, { told, sum }] of splitByDuty(group, context)) {
    if (duty === 'not-yet-required') {
      const { requiredForPlacingFrom } = row.newMembers ?? row;
      notNamed.push(
        tellNotNamed(told, { thresholdPercent, entry, reason: duty, requiredForPlacingFrom }, labelName),
      );
    } else if (duty === 'no-duty-in-market') {
      notNamed.push(tellNotNamed(told, { entry, reason: duty }, labelName));
    } else if (duty === 'not-listed-in-market') {
      notNamed.push(tellNotNamed(told, { thresholdPercent, entry, reason: duty }, labelName));
    } else if (comparePercent(sum, picopercentFrom(thresholdPercent)) > 0) {
      const confidence = context.market === 'GB' ? row.gb.confidence : row.confidence;
      const { name: _, ...members } = told;
      named.push(Object.assign(members, { labelName, thresholdPercent, entry, confidence }));
    } else {
      notNamed.push(tellNotNamed(told, { thresholdPercent, entry, reason: 'not-over-threshold' }, labelName));
    }
  }
}

/** An entry that has to be named over its threshold, with everything that counts towards it. */
export interface NamingThreshold {
  readonly labelName: string;
  readonly thresholdPercent: number;
  readonly members: readonly Member[];
}

/** Every threshold that the composition is held against, whatever the amounts. */
export const listNamingThresholds = (context: NamingContext, { allergens }: Composition): NamingThreshold[] =>
  allergens.groups.flatMap((group) => {
    const { labelName } = group.row;
    const thresholdPercent = thresholdOf(group.row, context.use);
    const due = splitByDuty(group, context).get('required');
    return due ? [{ labelName, thresholdPercent, members: due.members }] : [];
  });

/** Entries that a substance may have to be named under, whatever its amount. */
export function entriesWithDuty(
  tables: SafetyTables,
  substance: Substance,
  context: NamingContext,
): readonly AllergenRow[] {
  const rows = possibleRows(matchRows(tables, substance).allergens);
  return rows.filter((row) => dutyOf(row, substance, context) === 'required');
}

function tellDoubt(
  { member, told, doubt, mayBe, tellApartBy }: Doubt<AllergenRow>,
  context: NamingContext,
): NamingUnknown | NotNamed {
  const here = mayBe.filter((row) => dutyOf(row, member.of, context) === 'required');
  if (here.length === 0) {
    const reason = context.market === 'US' ? 'no-duty-in-market' : 'not-listed-in-market';
    return tellNotNamed(told, { reason });
  }
  return {
    name: told.name,
    percent: told.percent,
    numbers: numbersOfSubstance(member.of),
    reason: doubt,
    mayBe: here.map(({ labelName }) => labelName),
    tellApartBy,
  };
}

export function nameComposition(
  context: NamingContext,
  { allergens, withoutEntry }: Composition,
): NamingAnswer {
  const named: NamedAllergen[] = [];
  const notNamed: NotNamed[] = [];
  for (const group of allergens.groups) nameEntry(group, context, named, notNamed);
  const unknown: NamingUnknown[] = [];
  for (const doubt of allergens.doubts) {
    const told = tellDoubt(doubt, context);
    if ('mayBe' in told) unknown.push(told);
    else notNamed.push(told);
  }
  for (const { told } of withoutEntry) notNamed.push(tellNotNamed(told, { reason: 'no-entry' }));
  return { named, notNamed, unknown };
}

/**
 * Fragrance allergens to be named beside Parfum: content in percent by mass of the finished product strictly over
 * 0.001 % (leave-on) or 0.01 % (rinse-off), all origins added (Annex III of Regulation (EC) No 1223/2009 after
 * Regulation (EU) 2023/1545; Northern Ireland follows, Great Britain kept the list of 24, the United States have no
 * federal list). Expands nothing.
 */
export function nameAllergens(
  tables: SafetyTables,
  { contributions, ...context }: NamingInput,
): NamingAnswer {
  return nameComposition(context, composeContributions(tables, contributions, percentOfContribution));
}
