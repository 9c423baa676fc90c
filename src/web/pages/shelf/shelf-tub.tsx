import { Link } from '@tanstack/react-router';
import { sayDateWithYear, shelfWords } from '../../../words/index.ts';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import { Tub } from '../../parts/tub.tsx';
import { showAmount } from '../../show/show-amount.ts';
import { pictureOf } from './picture-of.ts';
import styles from './shelf.module.css';
import type { ShelfItem } from './shelf-item.ts';

const filled = ({ lots }: ShelfItem) => lots.filter(({ onHand }) => onHand !== '0');

function lotsInWords(item: ShelfItem): string {
  const count = filled(item).length;
  if (count === 0) return shelfWords.lots(0);
  const end = item.firstEnds === null ? undefined : sayDateWithYear(item.firstEnds);
  if (end === undefined) return `${shelfWords.lots(count)}, ${shelfWords.noEnd}`;
  return `${shelfWords.lots(count)}, ${count === 1 ? shelfWords.ends(end) : shelfWords.firstEnds(end)}`;
}

/** One item as it stands on the shelf: its level at a glance, the figures in words. */
export const ShelfTub = ({ item }: { readonly item: ShelfItem }) => (
  <li className={styles.tub}>
    <Tub have={item.onHand} full={item.fullMark} kind={pictureOf(item)} />
    <div className={styles.words}>
      <Link
        className={styles.name}
        to="/shelf/items/$kind/$id"
        params={{ kind: item.itemKind, id: item.itemId }}
      >
        {item.name}
      </Link>
      <p className={styles.amount}>{showAmount(item.onHand, item.unit)}</p>
      {item.group !== 'packaging' && <p className="soft small">{lotsInWords(item)}</p>}
      <p className="small">
        <State kind={item.state}>
          <Sentence saying={item.sentence} />
        </State>
      </p>
    </div>
  </li>
);
