import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { sayDateWithYear, shelfWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { Field } from '../../parts/field.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Page } from '../../shell/page.tsx';
import { showAmount } from '../../show/show-amount.ts';
import styles from './shelf.module.css';
import type { Lot } from './shelf-item.ts';

const { count: words } = shelfWords;

export const ChooseTubPage = () => (
  <Loaded read={useRead('findLots', { query: { like: '' } })} title={words.title}>
    {(lots) => <ChooseTub lots={lots.filter(({ onHand }) => onHand !== '0')} />}
  </Loaded>
);

const isLike = (lot: Lot, typed: string): boolean =>
  [lot.itemName, lot.number, lot.supplierLot ?? ''].some((text) =>
    text.toLowerCase().includes(typed.trim().toLowerCase()),
  );

function ChooseTub({ lots }: { readonly lots: readonly Lot[] }) {
  const [typed, setTyped] = useState('');
  const found = lots.filter((lot) => isLike(lot, typed));
  return (
    <Page title={words.title} says={words.choose} soft={words.chooseSoft} isNarrow>
      <Field label={words.find} where="like" value={typed} onChange={setTyped} isBench />
      {found.length === 0 && <p role="status">{lots.length === 0 ? words.none : words.noMatch}</p>}
      {found.length > 0 && (
        <Card isFlush>
          <ul className={styles.choices}>
            {found.map((lot) => (
              <li key={lot.id}>
                <TubChoice lot={lot} />
              </li>
            ))}
          </ul>
        </Card>
      )}
    </Page>
  );
}

const TubChoice = ({ lot }: { readonly lot: Lot }) => (
  <Link className={styles.choice} to="/shelf/lots/$id/weigh" params={{ id: lot.id }}>
    <strong>{lot.itemName}</strong>
    <span>{showAmount(lot.onHand, lot.unit)}</span>
    <span className="soft small">
      {shelfWords.lot.title(lot.number)},{' '}
      {lot.bestBefore === null ? shelfWords.noEnd : shelfWords.ends(sayDateWithYear(lot.bestBefore))}
    </span>
  </Link>
);
