import type { Problem } from '../../core/problem.ts';
import { call } from '../api/call.ts';
import { makeStamp } from '../api/make-stamp.ts';
import { personNow } from '../api/person-now.ts';
import type { KeptEntry } from './kept-entry.ts';

/** Puts an entry that was refused when it came late on the workshop's record, whole, to be asked about. */
export function keepClaim({ id, route, params, body, at }: KeptEntry, problems: readonly Problem[]) {
  const by = personNow.read() ?? body.stamp.by;
  return call('keepClaim', {
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
  });
}
