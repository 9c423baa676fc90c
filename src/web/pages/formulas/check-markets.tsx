import { checkWords, say } from '../../../words/index.ts';
import { Select } from '../../parts/select.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import styles from './check.module.css';
import type { Check } from './check.ts';

interface Props {
  readonly check: Check;
  /** As in the address: codes with commas; '' asks by where it is sold. */
  readonly asked: string;
  readonly onChange: (markets: string) => void;
}

type Market = Check['markets'][number]['market'];

/** Those whose law the tables hold; the United States are looked at by themselves. */
const ALL: readonly Market[] = ['GB', 'NI', 'EU'];
const EACH: readonly Market[] = [...ALL, 'US'];
const STATE = { yes: 'ready', decide: 'watch', no: 'stop' } as const;

/** May it be sold there? A line for every market; and which of them the page below is of. */
export const CheckMarkets = ({ check, asked, onChange }: Props) => (
  <div className={styles.markets}>
    <ul className={styles.reasons}>
      {check.everywhere.map((row) => (
        <li key={row.market}>
          <State kind={isSoldIn(check, row.market) ? STATE[row.answer] : 'plain'}>
            <strong>{checkWords.market[row.market]}:</strong>{' '}
            {checkWords.somewhere(row.answer, row.because && say(row.because), row.others, row.questions)}
          </State>
        </li>
      ))}
    </ul>
    <div className={styles.lookAt}>
      <Select
        label={checkWords.lookAt}
        where="markets"
        choices={choicesOf(check)}
        value={asked}
        onChange={onChange}
        none={
          check.sold.markets.length > 0
            ? checkWords.whereSold(nameOf(check.sold.markets))
            : checkWords.allMarkets
        }
        hint={checkWords.judgedFor(check.sold.products)}
      />
    </div>
    {check.markets.flatMap(({ market, notes }) =>
      notes.map((note) => (
        <p key={`${market}${note.code}`} className="soft">
          <Sentence saying={note} />
        </p>
      )),
    )}
  </div>
);

/** Nothing is wrong where it is not sold: it is only told. Before any product is made of it every market is looked at. */
const isSoldIn = ({ sold }: Check, market: Market): boolean =>
  sold.markets.length === 0 || sold.markets.includes(market);

/** Where it is sold comes first; each market by itself, and all of them, where that is not the same. */
function choicesOf({ sold }: Check) {
  const usual = sold.markets.length === 0 ? ALL : sold.markets;
  return [...EACH.map((market) => [market]), [...ALL]]
    .filter((markets) => markets.join() !== usual.join())
    .map((markets) => ({
      id: markets.join(','),
      name: markets.length === ALL.length ? checkWords.allMarkets : nameOf(markets),
    }));
}

const nameOf = (markets: readonly Market[]): string =>
  markets.map((market) => checkWords.market[market]).join(', ');
