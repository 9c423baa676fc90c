import type { trace } from '../../contract/index.ts';
import type { SignedClaim } from '../../storage/index.ts';
import { saying } from '../saying.ts';
import type { MorningData } from './read-morning.ts';
import { titleOf } from './title-of.ts';

/** What a tablet brought back and nobody has answered: a line for each batch and run, and one for all the rest. */
export const listClaimLines = (data: MorningData): trace.MorningLine[] => {
  const bySubject = new Map<string, SignedClaim[]>();
  for (const claim of data.claims) {
    const subject = `${claim.subject_kind} ${claim.subject_id}`.trim();
    bySubject.set(subject, [...(bySubject.get(subject) ?? []), claim]);
  }
  return [...bySubject].map(([subject, claims]) => lineOf(data, subject, claims));
};

function lineOf(data: MorningData, subject: string, claims: readonly SignedClaim[]): trace.MorningLine {
  return {
    key: `claims ${subject}`,
    title: nameOf(data, claims[0]),
    state: 'stop',
    stateWord: saying('morning-claim-asks'),
    detail: [saying('morning-claims-open', { open: claims.length })],
    action: { words: saying('morning-answer-claims'), to: '/making/away' },
    level: null,
  };
}

/** Where a batch or a run is under way it goes by its name; else by what it is. */
function nameOf({ book, runs }: MorningData, claim: SignedClaim | undefined): string {
  const batch = book.batches.find(({ id }) => id === claim?.subject_id);
  if (batch) return titleOf('morning-batch', { item: batch.formula_name, number: batch.number });
  const run = runs.find(({ id }) => id === claim?.subject_id);
  if (!run) return titleOf('morning-claims-elsewhere', {});
  const { name } = JSON.parse(run.product_details) as { readonly name: string };
  return titleOf('morning-batch', { item: name, number: run.number });
}
