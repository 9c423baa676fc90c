import { type UseQueryResult, useQuery } from '@tanstack/react-query';
import type { RouteName } from '../../contract/index.ts';
import { call } from './call.ts';
import type { AnswerOf, RequestOf } from './shapes.ts';

export interface ReadWish {
  /** false: not asked yet, e.g. while the form is incomplete. */
  readonly isWanted?: boolean;
  /** Shows the last answer while a changed question is on its way. */
  readonly keepsLast?: boolean;
  /** Asked again so often, where something changes that nobody writes. */
  readonly everyMs?: number;
}

/** A question to the workshop that is asked again after each write and whenever the page is looked at again. */
export function useRead<Name extends RouteName>(
  name: Name,
  request: RequestOf<Name> = {},
  { isWanted = true, keepsLast = false, everyMs }: ReadWish = {},
): UseQueryResult<AnswerOf<Name>, Error> {
  return useQuery<AnswerOf<Name>, Error>({
    queryKey: [name, request],
    queryFn: ({ signal }) => call(name, request, signal),
    enabled: isWanted,
    ...(everyMs === undefined ? {} : { refetchInterval: everyMs }),
    ...(keepsLast ? { placeholderData: (last: AnswerOf<Name> | undefined) => last } : {}),
  } as Parameters<typeof useQuery<AnswerOf<Name>, Error>>[0]);
}
