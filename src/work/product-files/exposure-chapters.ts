import type { OpenedRevision } from '../../check/index.ts';
import type { productFiles } from '../../contract/index.ts';
import { exact, sumOf, toText } from '../../core/quantity/index.ts';
import type { ExposureProductType } from '../../reference/index.ts';
import { sayDecimal } from '../../words/index.ts';
import { saying } from '../saying.ts';
import { type ExposedSubstance, exposeSubstances, shownFigure, shownMargin } from './expose-substances.ts';
import {
  ABSORPTION,
  BIOAVAILABILITY,
  BODY_WEIGHT,
  exposureSource,
  isSwallowed,
  LEAST_MARGIN,
} from './exposure-basis.ts';
import type { ExposureUses } from './exposure-uses.ts';
import { labelRule } from './label-rule.ts';
import { type Chapter, chapter, entry, figure, tableOf, type Words, word } from './write-chapter.ts';

type Point = productFiles.PointOfDeparture;

/** Part A, 6: how much of the product somebody gets in a day, by the table of the Notes of Guidance, use by use. */
export function productExposureChapter({ types, missing, child }: ExposureUses): Chapter {
  const title = labelRule('cpsr-a6').rule;
  if (types.length === 0)
    return chapter('exposure', 2, title, { state: 'missing', says: [saying('pf-exposure-no-type')] });
  const remembered = types.filter(({ confidence }) => confidence === 'memory').map(({ label }) => label);
  return chapter('exposure', 2, title, {
    ...(missing.length > 0 && { state: 'missing' as const }),
    says: [saying('pf-exposure-says')],
    cautions: [
      ...remembered.map((type) => saying('pf-exposure-remembered', { type })),
      ...(missing.length > 0 ? [saying('pf-exposure-use-missing', { uses: missing.join(', ') })] : []),
      ...(child ? [saying('pf-exposure-child', { ...child })] : []),
    ],
    entries: [
      ...types.flatMap(entriesOfType),
      ...(types.length > 1 ? [entry(saying('pf-exposure-together'), sayTogether(types))] : []),
    ],
  });
}

const entriesOfType = (type: ExposureProductType) => [
  entry(saying('pf-exposure-type'), type.label),
  entry(
    saying('pf-exposure-day'),
    saying('pf-exposure-figures', {
      grams: sayDecimal(type.exposureGramsPerDay),
      relative: sayDecimal(type.relativeExposureMgPerKgDay),
      retention: sayDecimal(type.retentionFraction),
      times: sayDecimal(type.applicationsPerDay),
      isRemembered: type.evidence?.applicationsPerDay?.confidence === 'memory' ? 'yes' : 'no',
    }),
  ),
  ...(type.note === undefined ? [] : [entry(saying('pf-exposure-note'), type.note)]),
  entry(saying('pf-col-source'), exposureSource(type.source)),
];

const sayTogether = (types: readonly ExposureProductType[]): Words =>
  saying('pf-exposure-sum', {
    relative: sayDecimal(
      toText(sumOf(types.map(({ relativeExposureMgPerKgDay }) => exact(relativeExposureMgPerKgDay)))),
    ),
  });

/** Part A, 7: how much of each substance, on the most that may be in it. */
export function substanceExposureChapter(
  opened: OpenedRevision,
  uses: ExposureUses,
  points: readonly Point[],
  key = 'substance-exposure',
): Chapter {
  const title = labelRule('cpsr-a7').rule;
  const { types, missing, child } = uses;
  if (types.length === 0)
    return chapter(key, 2, title, { state: 'missing', says: [saying('pf-exposure-no-type')] });
  const substances = exposeSubstances(opened, uses, points);
  return chapter(key, 2, title, {
    says: [saying('pf-margin-says'), sayDefaults(types.every(isSwallowed))],
    cautions: [
      ...cautionsOf(substances),
      ...(missing.length > 0 ? [saying('pf-exposure-use-missing', { uses: missing.join(', ') })] : []),
      ...(child ? [saying('pf-exposure-child', { ...child })] : []),
    ],
    tables: exposureTable(substances),
  });
}

const sayDefaults = (isAllSwallowed: boolean): Words =>
  saying('pf-margin-defaults', {
    swallowed: isAllSwallowed ? 'yes' : 'no',
    absorption: sayDecimal(ABSORPTION.value),
    bioavailability: sayDecimal(BIOAVAILABILITY.value),
    margin: sayDecimal(LEAST_MARGIN.value),
    bodyWeight: sayDecimal(BODY_WEIGHT.value),
  });

const cautionsOf = (substances: readonly ExposedSubstance[]): Words[] => {
  const below = substances.filter(({ isEnough }) => isEnough === false).map(({ name }) => name);
  return [
    ...(below.length === 0 ? [] : [saying('pf-margin-below', { n: below.length, names: below.join(', ') })]),
    ...(ABSORPTION.confidence === 'memory' ? [saying('pf-margin-remembered')] : []),
  ];
};

export function exposureTable(substances: readonly ExposedSubstance[]) {
  const rows = substances.map((row): Words[] => [
    row.name,
    sayDecimal(shownFigure(row.mostPercent)),
    sayDecimal(shownFigure(row.exposureMgPerKgDay)),
    sayPoint(row.point),
    row.marginOfSafety === null ? '' : sayDecimal(shownMargin(row.marginOfSafety)),
    verdictOf(row),
  ]);
  const columns = [
    word(saying('pf-col-substance')),
    figure(saying('pf-col-most')),
    figure(saying('pf-col-sed')),
    word(saying('pf-col-pod')),
    figure(saying('pf-col-mos')),
    word(saying('pf-col-verdict')),
  ];
  return tableOf(saying('pf-table-exposure'), columns, rows);
}

const sayPoint = (point: Point | null): Words =>
  point === null
    ? saying('pf-pod-none')
    : saying('pf-pod', {
        dose: sayDecimal(point.milligramsPerKgDay),
        route: point.route,
        source: point.source,
      });

function verdictOf({ isEnough, isRemembered }: ExposedSubstance): Words {
  const known = { isRemembered: isRemembered ? 'yes' : 'no' };
  if (isEnough === null) return saying('pf-left-to-assessor', known);
  return saying(isEnough ? 'pf-margin-enough' : 'pf-margin-short', known);
}
