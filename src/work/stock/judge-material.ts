import { splitLabelName } from '../../core/label/index.ts';
import { type Problem, problem } from '../../core/problem.ts';
import { exact, HUNDRED, sumOf, toText } from '../../core/quantity/index.ts';
import type { MaterialDetails } from './material-view.ts';

/** What contradicts itself in what a maker says of a material; the shapes were read already. */
export const judgeMaterial = (details: MaterialDetails): Problem[] => [
  ...judgeKind(details),
  ...judgeLabelNames(details),
  ...judgeFigures(details),
  ...details.constituents.flatMap(judgeRange),
  ...judgeWhole(details),
  ...judgePapers(details),
];

/** Grams and pieces are counted apart, so a thing is an ingredient or packaging and never something of both. */
function judgeKind(details: MaterialDetails): Problem[] {
  if (details.kind === 'packaging') {
    const asIngredient = [
      ...(details.constituents.length > 0 ? ['details.constituents'] : []),
      ...(details.constituentsAre !== null ? ['details.constituentsAre'] : []),
      ...(details.supplierMostPercent !== null ? ['details.supplierMostPercent'] : []),
    ];
    return [
      ...(details.packagingKind === null
        ? [problem('packaging-kind-missing', 'details.packagingKind', { found: details.name })]
        : []),
      ...asIngredient.map((where) => problem('not-for-packaging', where, { found: details.name })),
    ];
  }
  const asPackaging = (['packagingKind', 'brimMl', 'tareGrams'] as const).filter(
    (field) => details[field] !== null,
  );
  return asPackaging.map((field) =>
    problem('not-for-ingredients', `details.${field}`, { found: details[field] }),
  );
}

/** Printed as one word it would stand in one place, and no rule of either part would find it. */
const judgeLabelNames = (details: MaterialDetails): Problem[] =>
  (['inciEu', 'inciUs'] as const).flatMap((field) => {
    const found = details[field];
    const parts = splitLabelName(found);
    const parameters = { count: parts.length, parts: parts.join('; ') };
    return parts.length > 1
      ? [problem('label-name-holds-several', `details.${field}`, { found, parameters })]
      : [];
  });

function judgeFigures(details: MaterialDetails): Problem[] {
  const aboveNought = (['densityGramsPerMl', 'brimMl', 'packSize'] as const).flatMap((field) => {
    const value = details[field];
    return value !== null && exact(value).lte(0)
      ? [problem('value-not-above', `details.${field}`, { found: value, allowed: 0 })]
      : [];
  });
  const { reorderBelow } = details;
  const negative =
    reorderBelow !== null && exact(reorderBelow).lt(0)
      ? [
          problem('value-too-small', 'details.reorderBelow', {
            found: reorderBelow,
            allowed: 0,
            parameters: NUMBER,
          }),
        ]
      : [];
  return [...aboveNought, ...negative, ...judgePieces(details)];
}

const NUMBER = { counted: 'number' };

function judgePieces(details: MaterialDetails): Problem[] {
  if (details.kind !== 'packaging') return [];
  return (['reorderBelow', 'packSize'] as const).flatMap((field) => {
    const value = details[field];
    return value !== null && !exact(value).isInteger()
      ? [problem('pieces-not-whole', `details.${field}`, { found: value })]
      : [];
  });
}

/** What stops or frees a batch has to be looked up again: it names its paper. */
function judgePapers(details: MaterialDetails): Problem[] {
  const { constituentsAre, constituentsPaper, supplierMostPercent, supplierPaper } = details;
  return [
    ...(constituentsAre === 'complete' && constituentsPaper === ''
      ? [problem('statement-without-paper', 'details.constituentsPaper')]
      : []),
    ...(supplierMostPercent !== null && supplierPaper === ''
      ? [problem('supplier-limit-without-paper', 'details.supplierPaper', { found: supplierMostPercent })]
      : []),
  ];
}

function judgeRange(one: MaterialDetails['constituents'][number], index: number): Problem[] {
  const [least, typical, most] = [one.leastPercent, one.typicalPercent, one.mostPercent].map(exact);
  const isOrdered = least && typical && most && least.lte(typical) && typical.lte(most);
  return isOrdered
    ? []
    : [
        problem('constituent-range-crossed', `details.constituents[${index}]`, {
          found: `${one.leastPercent}, ${one.typicalPercent}, ${one.mostPercent}`,
          parameters: { constituent: one.name },
        }),
      ];
}

/** The typical amounts of a table may pass 100 % by their rounding; what is there at the least cannot. */
function judgeWhole({ constituents }: MaterialDetails): Problem[] {
  const least = sumOf(constituents.map((one) => one.leastPercent));
  const names = constituents.map((one) => `${one.name.toLowerCase()} ${one.cas ?? ''}`);
  const twice = constituents.filter((_, index) => names.indexOf(names[index] ?? '') !== index);
  return [
    ...(least.gt(HUNDRED)
      ? [problem('constituents-above-whole', 'details.constituents', { found: toText(least), allowed: 100 })]
      : []),
    ...twice.map((one) => problem('constituent-twice', 'details.constituents', { found: one.name })),
  ];
}
