import { Fragment, type ReactNode } from 'react';
import { partWords, sayDateWithYear, sayMoney, shelfWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { State } from '../../parts/state.tsx';
import { showAmount } from '../../show/show-amount.ts';
import styles from './shelf.module.css';
import type { Lot, LotDetail } from './shelf-item.ts';

const { lot: words } = shelfWords;
const day = (date: string | null): ReactNode =>
  date === null ? <State kind="watch">{partWords.notKnown}</State> : sayDateWithYear(date);

function paidInWords({ paid, paidFor, unit }: Lot, currency: string): string {
  if (paid === null) return partWords.notKnown;
  const money = sayMoney(paid, currency);
  return paidFor === null ? money : words.paidFor(money, showAmount(paidFor, unit));
}

/** What was bought has a supplier's paper; what was made here has a day to be looked at again. */
function factsOf(lot: Lot, currency: string): readonly (readonly [string, ReactNode])[] {
  const bought: readonly (readonly [string, ReactNode])[] = [
    [words.supplier, lot.supplier || partWords.notKnown],
    [words.supplierLot, lot.supplierLot ?? <State kind="watch">{partWords.notKnown}</State>],
    [words.paid, paidInWords(lot, currency)],
  ];
  return [
    [
      words.since,
      lot.foundAtOpening
        ? `${sayDateWithYear(lot.since)}, ${words.foundAtOpening}`
        : sayDateWithYear(lot.since),
    ],
    ...(lot.itemKind === 'formula' ? [] : [[words.bestBefore, day(lot.bestBefore)] as const]),
    ...(lot.keepUntil === null ? [] : [[words.keepUntil, sayDateWithYear(lot.keepUntil)] as const]),
    ...(lot.itemKind === 'material' ? bought : []),
    ...(lot.itemKind === 'product' ? [[words.reserved, showAmount(lot.reserved, lot.unit)] as const] : []),
    ...(lot.statusReason === '' ? [] : [[words.statusReason, lot.statusReason] as const]),
  ];
}

export function LotFactsList({ detail: { lot, places } }: { readonly detail: LotDetail }) {
  const currency = useRead('getWorkshop').data?.details?.currency ?? 'GBP';
  return (
    <div className={styles.scale}>
      <Card title={words.facts}>
        <dl className={styles.facts}>
          {factsOf(lot, currency).map(([name, value]) => (
            <Fragment key={name}>
              <dt>{name}</dt>
              <dd>{value}</dd>
            </Fragment>
          ))}
        </dl>
      </Card>
      <Card title={words.places}>
        <dl className={styles.facts}>
          {places.map((place) => (
            <Fragment key={place.placeId}>
              <dt>{place.name}</dt>
              <dd>{showAmount(place.onHand, lot.unit)}</dd>
            </Fragment>
          ))}
        </dl>
      </Card>
    </div>
  );
}
