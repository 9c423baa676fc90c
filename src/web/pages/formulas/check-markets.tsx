import { checkWords } from '../../../words/index.ts';
import { RadioChoice } from '../../parts/radio-choice.tsx';
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

/** Which markets it is judged for and why those, with the answer of each where there are several. */
export const CheckMarkets = ({ check, asked, onChange }: Props) => (
  <div className={styles.markets}>
    <p className="soft">{checkWords.judgedFor(check.sold.products)}</p>
    <RadioChoice title={checkWords.lookAt} choices={choicesOf(check)} value={asked} onChange={onChange} />
    {check.markets.flatMap(({ market, notes }) =>
      notes.map((note) => (
        <p key={`${market}${note.code}`} className="soft">
          <Sentence saying={note} />
        </p>
      )),
    )}
    {check.markets.length > 1 && (
      <ul className={styles.reasons}>
        {check.markets.map(({ market, answer, sentence }) => (
          <li key={market}>
            <State kind={STATE[answer]}>
              <Sentence saying={sentence} />
            </State>
          </li>
        ))}
      </ul>
    )}
  </div>
);

/** Where it is sold comes first; each market by itself, and all of them, where that is not the same. */
function choicesOf({ sold }: Check) {
  const usual = sold.markets.length === 0 ? [...ALL] : sold.markets;
  const others = [...EACH.map((market) => [market]), [...ALL]].filter(
    (markets) => markets.join() !== usual.join(),
  );
  return [usual, ...others].map((markets, index) => ({
    id: index === 0 ? '' : markets.join(','),
    name:
      index === 0 && sold.markets.length > 0
        ? checkWords.whereSold(nameOf(markets))
        : markets.length === ALL.length
          ? checkWords.allMarkets
          : nameOf(markets),
  }));
}

const nameOf = (markets: readonly Market[]): string =>
  markets.map((market) => checkWords.market[market]).join(', ');
