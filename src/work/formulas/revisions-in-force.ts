import { listRevisions, type Reader, type RevisionHead } from '../../storage/index.ts';
import type { RevisionDetails } from './revision-view.ts';

export const standingOf = (head: Pick<RevisionHead, 'details'>): RevisionDetails['standing'] =>
  (JSON.parse(head.details) as RevisionDetails).standing;

/**
 * Of each formula the revision in force: the newest one for sale. A trial that is being tried out changes nothing that is
 * sold; where there is only a trial, that one is all there is.
 */
export const listRevisionsInForce = async (db: Reader): Promise<RevisionHead[]> =>
  pickInForce(await listRevisions(db));

/** The same of heads that are at hand, the oldest first. */
export function pickInForce(heads: readonly RevisionHead[]): RevisionHead[] {
  const inForce = new Map<string, RevisionHead>();
  for (const head of heads) {
    const known = inForce.get(head.formula_id);
    if (known === undefined || standingOf(head) === 'for-sale' || standingOf(known) === 'trial')
      inForce.set(head.formula_id, head);
  }
  return [...inForce.values()];
}
