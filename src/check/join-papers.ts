import type { certificates } from '../contract/index.ts';
import { isSameConstituent, type PaperDetails } from './with-certificate.ts';

/** One paper on a lot, as it was entered. */
export interface LotPaper {
  readonly id: string;
  readonly reference: string;
  readonly datedOn: string | null;
  readonly details: certificates.CertificateDetails;
}

/** The papers that another one was entered instead of. What replaced one may have been replaced itself. */
export const listReplaced = (papers: readonly LotPaper[]): ReadonlySet<string> =>
  new Set(papers.flatMap(({ details }) => details.insteadOf ?? []));

/**
 * What counts of all papers on one lot, given in the order in which they were entered. A lot has several: an analysis, a
 * peroxide value measured later, a conformity statement. Each tells what it tells, and what a newer one does not speak of
 * stands; only a paper entered instead of another takes that one's figures away. undefined: none is left.
 */
export function joinPapers(papers: readonly LotPaper[]): PaperDetails | undefined {
  const replaced = listReplaced(papers);
  const standing = papers.filter(({ id }) => !replaced.has(id));
  return standing.length === 0 ? undefined : standing.reduce(withPaper, NOTHING);
}

const NOTHING: PaperDetails = { constituents: [], isComplete: false, peroxide: null, ifra: [] };

function withPaper(known: PaperDetails, { reference, datedOn, details }: LotPaper): PaperDetails {
  const paper = reference;
  const ifra = details.ifra.map((statement) => ({ ...statement, paper }));
  const peroxide = details.peroxide && { ...details.peroxide, paper, paperDay: datedOn };
  return {
    ...joinConstituents(
      known,
      details.constituents.map((one) => ({ ...one, paper })),
      details.isComplete,
    ),
    peroxide: laterMeasured(known.peroxide, peroxide),
    ifra: [
      ...known.ifra.filter(({ category }) => !ifra.some((newer) => newer.category === category)),
      ...ifra,
    ],
  };
}

/** A list of everything takes the place of all that was listed; of another, each line that of the same constituent. */
function joinConstituents(
  known: PaperDetails,
  told: PaperDetails['constituents'],
  isComplete: boolean,
): Pick<PaperDetails, 'constituents' | 'isComplete'> {
  if (isComplete) return { constituents: told, isComplete };
  const kept = known.constituents.filter((one) => !told.some((newer) => isSameConstituent(one, newer)));
  return { constituents: [...kept, ...told], isComplete: known.isComplete };
}

/** It rises with age: what was measured later counts, and where a day is not told what was entered later. */
function laterMeasured(
  known: PaperDetails['peroxide'],
  told: PaperDetails['peroxide'],
): PaperDetails['peroxide'] {
  if (known === null || told === null) return told ?? known;
  const [before, now] = [dayOf(known), dayOf(told)];
  return before !== null && now !== null && before > now ? known : told;
}

const dayOf = ({ measuredOn, paperDay }: NonNullable<PaperDetails['peroxide']>): string | null =>
  measuredOn ?? paperDay ?? null;
