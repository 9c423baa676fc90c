import { readCasNumbers } from '../../check/index.ts';
import type { certificates } from '../../contract/index.ts';
import { readPaperRange } from '../../core/formula/index.ts';
import { done, type Problem, problem, type Result, refused } from '../../core/problem.ts';
import { exact, HUNDRED, sumOf, toText } from '../../core/quantity/index.ts';
import { findCasFault, normaliseName } from '../../core/safety/index.ts';
import type { RequestOf } from '../use-case.ts';

type Asked = RequestOf<'saveLotCertificate'>['body'];
type Details = certificates.CertificateDetails;

/** What the paper says with every range whole; or all that contradicts itself in it. */
export function readCertificate({ details, datedOn }: Asked, today: string): Result<Details> {
  const ranges = details.constituents.map((one, index) =>
    readPaperRange(one, `details.constituents[${index}]`),
  );
  const constituents = details.constituents.flatMap(({ name, cas }, index) => {
    const range = ranges[index];
    return range?.ok ? [{ name, cas: cas || null, ...range.value }] : [];
  });
  const read: Details = { ...details, constituents };
  const problems = [
    ...judgeDays(read, datedOn, today),
    ...ranges.flatMap((range, index) =>
      range.ok ? [] : range.problems.map((each) => withName(each, details.constituents[index]?.name ?? '')),
    ),
    ...details.constituents.flatMap(({ cas }, index) => judgeNumbers(cas, index)),
    ...judgeWhole(constituents),
    ...judgePeroxide(read),
    ...judgeStatements(read),
    ...judgeEmpty(details),
  ];
  return problems.length > 0 ? refused(...problems) : done(read);
}

const withName = (each: Problem, constituent: string): Problem => ({
  ...each,
  parameters: { ...each.parameters, constituent },
});

function judgeDays({ peroxide }: Details, datedOn: string | null, today: string): Problem[] {
  const ahead = (day: string | null | undefined, where: string): Problem[] =>
    day != null && day > today
      ? [problem('certificate-day-ahead', where, { found: day, allowed: today })]
      : [];
  return [...ahead(datedOn, 'datedOn'), ...ahead(peroxide?.measuredOn, 'details.peroxide.measuredOn')];
}

function judgeNumbers(cas: string | null, index: number): Problem[] {
  return readCasNumbers(cas ?? '').flatMap((number) => {
    const fault = findCasFault(number);
    if (fault === undefined) return [];
    const where = `details.constituents[${index}].cas`;
    return [
      fault === 'shape'
        ? problem('cas-number-shape', where, { found: number })
        : problem('cas-number-check-digit', where, { found: number }),
    ];
  });
}

/** What is there at the least cannot be more than the whole; the same name or number twice is one line too many. */
function judgeWhole(constituents: Details['constituents']): Problem[] {
  const least = sumOf(constituents.map((one) => one.leastPercent));
  const keys = constituents.map(({ name, cas }) => `${normaliseName(name)} ${cas ?? ''}`);
  const twice = constituents.filter((_, index) => keys.indexOf(keys[index] ?? '') !== index);
  return [
    ...(least.gt(HUNDRED)
      ? [problem('constituents-above-whole', 'details.constituents', { found: toText(least), allowed: 100 })]
      : []),
    ...twice.map((one) => problem('constituent-twice', 'details.constituents', { found: one.name })),
  ];
}

const judgePeroxide = ({ peroxide }: Details): Problem[] =>
  peroxide !== null && exact(peroxide.mmolPerLitre).lt(0)
    ? [problem('peroxide-negative', 'details.peroxide.mmolPerLitre', { found: peroxide.mmolPerLitre })]
    : [];

function judgeStatements({ ifra }: Details): Problem[] {
  const categories = ifra.map(({ category }) => category);
  return [
    ...ifra
      .filter(({ category }, index) => categories.indexOf(category) !== index)
      .map(({ category }) => problem('ifra-category-twice', 'details.ifra', { found: category })),
    ...ifra.flatMap(({ edition }, index) =>
      EDITION.test(edition)
        ? []
        : [problem('ifra-edition-number', `details.ifra[${index}].edition`, { found: edition })],
    ),
  ];
}

/** IFRA counts its amendments: the 51st is of 2023. */
const EDITION = /^[1-9]\d?$/;

/** "Complete" without a constituent says that there is nothing such in it, which is a statement. */
const judgeEmpty = ({ constituents, isComplete, peroxide, ifra }: Asked['details']): Problem[] =>
  constituents.length === 0 && !isComplete && peroxide === null && ifra.length === 0
    ? [problem('certificate-says-nothing', 'details')]
    : [];
