import type { Market, Saying } from '../contract/index.ts';
import { saying } from '../contract/index.ts';
import {
  type CheckedNamingUnknown,
  type CheckedVerdict,
  normaliseName,
  type UnknownReason,
} from '../core/safety/index.ts';
import type { Checked, MaterialDetails } from './checked.ts';
import { type DecidedUpon, groundsOf } from './decided-upon.ts';
import { isHeardOf } from './is-heard-of.ts';
import { readCasNumbers } from './read-cas-numbers.ts';
import { compositionKey, unheardKey } from './unknown-key.ts';

/** One thing that no source tells, in one market. */
export interface MarketUnknown {
  readonly market: Market;
  readonly key: string;
  readonly substance: string;
  readonly why: Saying;
  /** Unknowns of several markets with one signature are one question. */
  readonly signature: string;
  /** What a decision on it is taken upon, and its digest. */
  readonly upon: readonly DecidedUpon[];
  readonly digest: string;
}

/** Before it is known what it is of. */
interface Found extends Omit<MarketUnknown, 'upon' | 'digest'> {
  /** Materials that bring it in, as the workshop calls them. */
  readonly from: readonly string[];
}

const WHY: Readonly<Record<UnknownReason, string>> = {
  'shared-cas': 'unknown-shared-cas',
  'ambiguous-name': 'unknown-ambiguous-name',
  'name-contradicts-fields': 'unknown-name-contradicts-fields',
  'may-be-prohibited': 'unknown-may-be-prohibited',
  'amount-not-known': 'unknown-amount',
  'value-not-known': 'unknown-value',
  'use-not-covered': 'unknown-use',
  'counted-as-other': 'unknown-counted-as-other',
  'needs-certificate': 'unknown-needs-certificate',
  'law-not-in-tables': 'unknown-law-not-in-tables',
  'positive-list-not-in-tables': 'unknown-positive-list',
  'conditions-not-in-tables': 'unknown-conditions',
};

const whyCode = ({ reason }: CheckedVerdict): string => WHY[reason ?? 'value-not-known'];

export function listUnknowns(checked: Checked): MarketUnknown[] {
  const markets = checked.groups.flatMap((group) => group.answer.markets);
  const found = [
    ...markets.flatMap(({ market, verdicts }) => verdicts.flatMap((verdict) => ofVerdict(market, verdict))),
    ...markets.flatMap(({ market, naming }) =>
      naming.unknown.map((unknown) => ofNaming(market, unknown, checked)),
    ),
    ...markets.flatMap(({ market }) => ofCompositions(market, checked)),
  ];
  const grounds = groundsOf(checked.opened);
  return found.map(({ from, ...rest }) => ({ ...rest, ...grounds.of(from) }));
}

export const whyUnknown = (verdict: CheckedVerdict): Saying =>
  saying(whyCode(verdict), {
    substance: verdict.name,
    rule: verdict.citation ?? verdict.source ?? '',
    asWhat: verdict.asWhat ?? '',
    hasWhat: verdict.asWhat !== undefined,
    ...figureAsked(verdict),
    mayBe: (verdict.mayBe ?? []).join(', '),
    tellApartBy: (verdict.tellApartBy ?? []).join(', '),
  });

/** The one figure of a certificate that the tables give as a most: a peroxide value. */
const figureAsked = ({ limitValue, limitUnit, isStrict = false }: CheckedVerdict) => {
  const hasMost = limitValue !== undefined && limitUnit === 'mmol-per-litre';
  return { hasMost, mostValue: hasMost ? String(limitValue) : '', isBelow: isStrict };
};

function ofVerdict(market: Market, verdict: CheckedVerdict): Found[] {
  if (verdict.verdict !== 'unknown' || verdict.unknownKey === undefined) return [];
  const { kind = '', reason = '', name, asWhat = '', limitValue = '', numbers = [] } = verdict;
  return [
    {
      market,
      key: verdict.unknownKey,
      substance: name,
      why: whyUnknown(verdict),
      signature: ['limit', kind, reason, normaliseName(name), numbers.join('+'), asWhat, limitValue].join(
        ':',
      ),
      from: verdict.fromMaterials ?? [],
    },
  ];
}

const ofNaming = (market: Market, unknown: CheckedNamingUnknown, { opened }: Checked): Found => ({
  market,
  key: unknown.unknownKey,
  substance: unknown.name,
  why: saying(unknown.reason === 'amount-not-known' ? 'unknown-label-amount' : 'unknown-label-name', {
    substance: unknown.name,
    mayBe: unknown.mayBe.join(', '),
  }),
  signature: ['naming', unknown.reason, normaliseName(unknown.name), unknown.numbers.join('+')].join(':'),
  from: opened.contributions
    .filter(({ name }) => normaliseName(name) === normaliseName(unknown.name))
    .flatMap(({ fromMaterials }) => fromMaterials),
});

/**
 * What is in a material that no paper tells would pass every limit and every name: that it does is not known. Only a
 * paper that lists all of it answers, whatever the material is called and whatever is listed already.
 */
const ofCompositions = (market: Market, { opened }: Checked): Found[] =>
  onceByKey(
    opened.kinds.flatMap(({ materialId, details }) => [
      ...ofRest(market, materialId, details),
      ...ofUnheard(market, materialId, details),
    ]),
  );

/** Two lots of one material ask one question. */
const onceByKey = (found: readonly Found[]): Found[] => [
  ...new Map(found.map((each) => [each.key, each])).values(),
];

function ofRest(market: Market, materialId: string, details: MaterialDetails): Found[] {
  const { name, constituents, constituentsAre, constituentsPaper } = details;
  if (constituentsAre === 'complete') return [];
  const unsaid = constituents.length === 0 ? 'unknown-composition' : 'unknown-rest-unsaid';
  return [
    {
      market,
      key: compositionKey(market, materialId),
      substance: name,
      why: saying(constituentsAre === 'partial' ? 'unknown-rest' : unsaid, {
        substance: name,
        hasPaper: constituentsPaper === '' ? 'no' : 'yes',
        paper: constituentsPaper,
      }),
      signature: `composition:${materialId}`,
      from: [name],
    },
  ];
}

/** A paper lists what has a limit or must be named. Where none of the tables knows a name on it, "no rule" says nothing. */
const ofUnheard = (market: Market, materialId: string, details: MaterialDetails): Found[] =>
  details.constituents
    .filter(({ name, cas }) => !isHeardOf({ name, alsoCas: readCasNumbers(cas ?? '') }))
    .map((constituent) => ({
      market,
      key: unheardKey(market, materialId, constituent),
      substance: constituent.name,
      why: saying('unknown-constituent', { substance: constituent.name, material: details.name }),
      signature: `unheard:${materialId}:${normaliseName(constituent.name)}:${constituent.cas ?? ''}`,
      from: [details.name],
    }));
