import { makingWords, sayGrams } from '../../../words/index.ts';
import { Moment } from '../../parts/moment.tsx';
import type { Batch } from './batch.ts';

type Struck = Batch['struck'][number];

interface Props {
  readonly batch: Batch;
  readonly screen: number;
}

/** What was entered here before and struck: readable, with why. */
export function StruckEntries({ batch, screen }: Props) {
  const own = batch.struck.filter((entry) => entry.screen === screen);
  if (own.length === 0) return null;
  return (
    <ul>
      {own.map((entry) => (
        <li key={entry.entryId}>
          <StruckEntry entry={entry} />
        </li>
      ))}
    </ul>
  );
}

export const StruckEntry = ({ entry }: { readonly entry: Struck }) => (
  <>
    <p>
      <s>
        {entry.lotNumber === null || entry.actualGrams === null
          ? entry.what
          : makingWords.struckWhat(entry.what, entry.lotNumber, sayGrams(entry.actualGrams))}
      </s>{' '}
      <span className="soft small">
        {'\u00b7 '}
        {entry.by}, <Moment at={entry.at} />
      </span>
    </p>
    <p className="soft small">
      {makingWords.struckBy(entry.struckBy)}, <Moment at={entry.struckAt} />: {entry.why}
    </p>
  </>
);
