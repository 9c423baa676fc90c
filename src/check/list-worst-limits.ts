import type { Saying } from '../contract/index.ts';
import { saying } from '../contract/index.ts';
import { expandFormula, type FormulaLine, type FormulaLookup } from '../core/formula/index.ts';
import { type Exact, exact, sumOf, toText, ZERO } from '../core/quantity/index.ts';
import {
  type CheckedVerdict,
  findWorstPercent,
  PHOTOTOXIC_SUM,
  type WeighedPart,
  type WorstLimit,
} from '../core/safety/index.ts';
import type { Checked, OpenedRevision } from './checked.ts';
import { openComposition } from './open-composition.ts';
import { sayUse } from './say-use.ts';
import type { CertifiedLot } from './with-certificate.ts';

/** A limit of what was weighed in, with how much of what it limits each of the weighings brings, and how it is said. */
export interface NamedLimit extends WorstLimit {
  readonly substance: string;
  readonly says: (worst: Exact) => Saying;
}

interface Part {
  /** The most of each substance in it, in percent, by name. */
  readonly most: ReadonlyMap<string, Exact>;
  readonly materials: ReadonlyMap<string, Exact>;
  /** Of a base that was weighed together: its own weighings, with what each brought in. */
  readonly made: readonly { readonly weighed: WeighedPart; readonly part: Part }[];
}

export interface WeighedLookup extends FormulaLookup {
  readonly certified: ReadonlyMap<string, CertifiedLot>;
  /** By the batch of a base: its weighings with their errors, in the order of its lines. */
  readonly weighedOf: (batchId: string) => readonly WeighedPart[] | undefined;
}

/**
 * Every limit of law, IFRA and suppliers' papers that a checked batch is compared with, laid out by its weighings. The
 * most of each material counts, each lot by its own certificate, and a base as the worst of its own weighings makes it. A
 * rule that counts single esters is taken upon their
 * sum, which is never less.
 */
export function listWorstLimits(
  checked: Checked,
  lines: readonly FormulaLine[],
  lookup: WeighedLookup,
): NamedLimit[] {
  const parts = lines.map((line) => openPart(checked.opened, line, lookup));
  const limits = checked.groups.flatMap(({ answer }) => [
    ...answer.markets.flatMap(({ verdicts }) => limitsOf(verdicts, parts)),
    ...answer.supplier.map(
      ({ materialId, name, limitPercent, source }): NamedLimit =>
        ofMost({ substance: name, limitPercent, rule: source, isOfSupplier: true }, parts, (part) =>
          part.materials.get(materialId),
        ),
    ),
  ]);
  return [...new Map(limits.map((limit) => [keyOf(limit), limit])).values()];
}

const keyOf = ({ says, limitPercent, percentIn }: NamedLimit): string =>
  JSON.stringify([says(ZERO), String(limitPercent), percentIn.map(String)]);

function openPart(opened: OpenedRevision, line: FormulaLine, lookup: WeighedLookup): Part {
  const recipe = { formulaId: 'part', name: 'part', lines: [line] };
  const expanded = expandFormula('part', { revision: () => recipe, base: lookup.base });
  const part = expanded.ok
    ? openComposition({ ...opened, expanded: expanded.value, certified: lookup.certified })
    : undefined;
  if (!part?.ok) throw new Error('a weighing that the whole batch was opened with does not open');
  const most = new Map<string, Exact>();
  for (const { name, mostPercent } of part.value.contributions)
    most.set(name, (most.get(name) ?? ZERO).plus(mostPercent.toExact()));
  const materials = new Map(
    part.value.expanded.materials.map(({ materialId, percent }) => [materialId, percent]),
  );
  return { most, materials, made: openMade(opened, line, lookup) };
}

/** Each line of the base by itself; nothing where its weighings are not known one by one. */
function openMade(opened: OpenedRevision, { item }: FormulaLine, lookup: WeighedLookup): Part['made'] {
  const lines = item.kind === 'base' ? (lookup.base(item.formulaId)?.lines ?? []) : [];
  const weighed = item.kind === 'base' ? (lookup.weighedOf(item.formulaId) ?? []) : [];
  if (lines.length !== weighed.length) return [];
  return lines.flatMap((line, index) => {
    const own = weighed[index];
    return own ? [{ weighed: own, part: openPart(opened, line, lookup) }] : [];
  });
}

/** The highest content that the errors of the base's own weighings leave possible. */
function worstContent(part: Part, contentOf: (part: Part) => Exact | undefined): Exact {
  if (part.made.length === 0) return contentOf(part) ?? ZERO;
  const percentIn = part.made.map((each) => worstContent(each.part, contentOf));
  return findWorstPercent(
    part.made.map(({ weighed }) => weighed),
    { limitPercent: 0, percentIn },
  );
}

function limitsOf(verdicts: readonly CheckedVerdict[], parts: readonly Part[]): NamedLimit[] {
  return verdicts.flatMap((verdict) => {
    const { verdict: word, limitPercent, name, members } = verdict;
    if ((word !== 'within' && word !== 'over') || limitPercent === undefined) return [];
    const weights = verdict.ruleId === PHOTOTOXIC_SUM.ruleId ? sharesOfLimit(verdicts, members) : undefined;
    const facts = {
      substance: name,
      limitPercent,
      isStrict: verdict.isStrict === true,
      rule: verdict.citation ?? verdict.source ?? '',
      use: verdict.forUse ? sayUse(verdict.forUse) : '',
    };
    return [
      ofMost(facts, parts, ({ most }) =>
        sumOf(members.map((member) => (most.get(member) ?? ZERO).times(weights?.get(member) ?? 1))),
      ),
    ];
  });
}

/** Sum of content / limit over the phototoxic oils, in percent of the whole: 100 is the limit (IFRA Standards). */
const sharesOfLimit = (
  verdicts: readonly CheckedVerdict[],
  members: readonly string[],
): ReadonlyMap<string, Exact> =>
  new Map(
    members.flatMap((member) => {
      const own = verdicts.find(
        ({ kind, ruleId, members: of, limitPercent }) =>
          kind === 'ifra' &&
          ruleId !== PHOTOTOXIC_SUM.ruleId &&
          of.includes(member) &&
          limitPercent !== undefined,
      );
      return own?.limitPercent === undefined ? [] : [[member, exact(100).div(own.limitPercent)] as const];
    }),
  );

interface LimitFacts {
  readonly substance: string;
  readonly limitPercent: number;
  readonly rule: string;
  readonly isStrict?: boolean;
  readonly use?: string;
  readonly isOfSupplier?: boolean;
}

const ofMost = (
  { isStrict = false, isOfSupplier = false, use = '', ...facts }: LimitFacts,
  parts: readonly Part[],
  contentOf: (part: Part) => Exact | undefined,
): NamedLimit => ({
  substance: facts.substance,
  limitPercent: facts.limitPercent,
  isStrict,
  percentIn: parts.map((part) => worstContent(part, contentOf)),
  says: (worst) =>
    saying('worst-over', {
      substance: facts.substance,
      percent: toText(worst.toDecimalPlaces(5, 0)),
      limitPercent: toText(exact(facts.limitPercent)),
      rule: facts.rule,
      isOfSupplier,
      hasUse: use !== '',
      use,
    }),
});
