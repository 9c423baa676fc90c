import type { Batch, Screen } from './batch.ts';
import { nameOf } from './name-of.ts';

/** What somebody else did to the batch that this page shows. */
export interface News {
  readonly kind: 'weighed' | 'done' | 'struck';
  readonly entryId: string;
  readonly by: string;
  readonly what: string;
  readonly at: string;
}

const entriesOf = (screen: Screen): readonly News[] => {
  const what = nameOf(screen);
  if (screen.kind === 'addition')
    return screen.entries.map(({ entryId, by, at }) => ({ kind: 'weighed', entryId, by, what, at }));
  return screen.done ? [{ kind: 'done', what, ...pick(screen.done) }] : [];
};

const pick = ({
  entryId,
  by,
  at,
}: {
  readonly entryId: string;
  readonly by: string;
  readonly at: string;
}) => ({
  entryId,
  by,
  at,
});

const strikesOf = ({ struck }: Batch): readonly News[] =>
  struck.map(({ entryId, what, struckAt, struckBy }) => ({
    kind: 'struck',
    entryId: `struck ${entryId}`,
    by: struckBy,
    what,
    at: struckAt,
  }));

const allOf = (batch: Batch): readonly News[] => [...batch.screens.flatMap(entriesOf), ...strikesOf(batch)];

/** What stands in the batch now, did not before, and was not entered here. */
export function listNews(before: Batch, now: Batch, isOwn: (entryId: string) => boolean): readonly News[] {
  if (before.id !== now.id) return [];
  const known = new Set(allOf(before).map(({ entryId }) => entryId));
  return allOf(now).filter(({ entryId }) => !known.has(entryId) && !isOwn(entryId));
}
