import type { Problem } from '../../core/problem.ts';
import { call } from '../api/call.ts';
import { makeStamp } from '../api/make-stamp.ts';
import { personNow } from '../api/person-now.ts';
import type { KeptEntry } from './kept-entry.ts';
import { ANSWER_MS } from './patience.ts';

/**
 * Puts an entry that was refused when it came late on the workshop's record, whole, to be asked about: signed by who did
 * it, so that it can be entered in their name.
 */
export const keepClaim = (entry: KeptEntry, problems: readonly Problem[]) =>
  keepClaimBy(entry.body.stamp.by, entry, problems);

/** Handed in by somebody else, as told: whoever did it cannot sign on this tablet any more. */
export const handIn = (entry: KeptEntry, problems: readonly Problem[]) =>
  keepClaimBy(personNow.read() ?? entry.body.stamp.by, entry, problems);

function keepClaimBy(by: string, { id, route, params, body, at }: KeptEntry, problems: readonly Problem[]) {
  const request = {
    body: {
      stamp: makeStamp(by),
      entry: { id, route, params, body: { ...body }, at },
      problems: problems.map(({ code, where, found, allowed, source, parameters }) => ({
        code,
        where,
        ...(found === undefined ? {} : { found }),
        ...(allowed === undefined ? {} : { allowed }),
        ...(source === undefined ? {} : { source }),
        ...(parameters === undefined ? {} : { parameters: { ...parameters } }),
      })),
    },
  };
  // Whoever waits for it holds up all tabs of this browser: no answer in time is silence.
  return call('keepClaim', request, AbortSignal.timeout(ANSWER_MS));
}
