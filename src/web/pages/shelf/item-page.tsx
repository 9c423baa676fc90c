import { shelfWords, termWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { Figure } from '../../parts/figure.tsx';
import { Figures } from '../../parts/figures.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import { Tub } from '../../parts/tub.tsx';
import { NotFound } from '../../shell/not-found.tsx';
import { Page } from '../../shell/page.tsx';
import { useParam } from '../../shell/use-param.ts';
import { showAmount } from '../../show/show-amount.ts';
import { LotsTable } from './lots-table.tsx';
import { pictureOf } from './picture-of.ts';
import styles from './shelf.module.css';
import type { ShelfItem } from './shelf-item.ts';

const { item: words } = shelfWords;

export function ItemPage() {
  const kind = useParam('kind');
  const id = useParam('id');
  return (
    <Loaded key={id} read={useRead('getShelf')} title={shelfWords.title}>
      {({ items }) => {
        const item = items.find(({ itemKind, itemId }) => itemKind === kind && itemId === id);
        return item ? <ItemView item={item} /> : <NotFound />;
      }}
    </Loaded>
  );
}

const ItemView = ({ item }: { readonly item: ShelfItem }) => (
  <Page
    title={item.name}
    above={
      <>
        {termWords.group[item.group]} ·{' '}
        <State kind={item.state}>
          <Sentence saying={item.sentence} />
        </State>
      </>
    }
    says={
      item.onHand === '0'
        ? words.saysNone(item.name)
        : words.says(showAmount(item.onHand, item.unit), item.name)
    }
    actions={<ItemActions item={item} />}
  >
    <div className={styles.itemTop}>
      <Tub have={item.onHand} full={item.fullMark} kind={pictureOf(item)} isLarge />
      <Figures>
        <Figure label={words.onHand} value={showAmount(item.onHand, item.unit)} />
        <Figure label={words.usable} value={showAmount(item.usable, item.unit)} />
        {item.group === 'product' && (
          <Figure label={words.reserved} value={showAmount(item.reserved, item.unit)} />
        )}
        <Figure label={words.needed} value={showAmount(item.needed, item.unit)} />
        {item.reorderBelow !== null && (
          <Figure label={words.reorderBelow} value={showAmount(item.reorderBelow, item.unit)} />
        )}
      </Figures>
    </div>
    {item.lotsWithUnknowns > 0 && (
      <p>
        <State kind="watch">{shelfWords.withUnknowns(item.lotsWithUnknowns)}</State>
      </p>
    )}
    <Card title={words.lotsTitle} isFlush={item.lots.length > 0}>
      {item.lots.length > 0 ? <LotsTable lots={item.lots} /> : <p className="soft">{words.noLots}</p>}
    </Card>
  </Page>
);

function ItemActions({ item }: { readonly item: ShelfItem }) {
  if (item.itemKind !== 'material') return null;
  return (
    <>
      <LinkButton to={`/materials/${item.itemId}`}>{words.material}</LinkButton>
      <LinkButton to={`/shelf/receive/${item.itemId}`} isAct>
        {shelfWords.receive}
      </LinkButton>
    </>
  );
}
