import { useEffect, useRef, useState } from 'react';
import { awayWords, sayTime } from '../../../words/index.ts';
import { useTimeZone } from '../../api/use-time-zone.ts';
import { ownEntries } from '../../away/own-entries.ts';
import type { Batch } from './batch.ts';
import { listNews, type News } from './list-news.ts';

/** More than these are on the screens themselves (common practice, no source). */
const SHOWN = 3;

/** What somebody else did here meanwhile, in a line each: told politely, and left to be read. */
export function NewsLine({ batch }: { readonly batch: Batch }) {
  const timeZone = useTimeZone();
  const before = useRef(batch);
  const [news, setNews] = useState<readonly News[]>([]);
  useEffect(() => {
    const fresh = listNews(before.current, batch, ownEntries.has);
    before.current = batch;
    if (fresh.length > 0) setNews((shown) => [...shown, ...fresh].slice(-SHOWN));
  }, [batch]);
  return (
    <div role="status">
      {news.map(({ entryId, kind, by, what, at }) => (
        <p key={entryId} className="soft">
          {awayWords.news[kind](by, what, sayTime(at, timeZone))}
        </p>
      ))}
    </div>
  );
}
