import { Link } from '@tanstack/react-router';
import { sayDateWithYear, shelfWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { useTimeZone } from '../../api/use-time-zone.ts';
import { Card } from '../../parts/card.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Page } from '../../shell/page.tsx';
import { useParam } from '../../shell/use-param.ts';
import { sayRange } from '../../show/say-range.ts';
import { CertificateCard } from './certificate-card.tsx';
import { LotActions } from './lot-actions.tsx';
import { LotFactsList } from './lot-facts-list.tsx';
import { lotInWords } from './lot-in-words.ts';
import { LotMovements } from './lot-movements.tsx';
import { LotState } from './lot-state.tsx';
import type { Lot, LotDetail } from './shelf-item.ts';

const { lot: words } = shelfWords;

export function LotPage() {
  const id = useParam('id');
  return (
    <Loaded key={id} read={useRead('getLot', { params: { id } })} title={shelfWords.title}>
      {(detail) => <LotView detail={detail} />}
    </Loaded>
  );
}

const LotView = ({ detail }: { readonly detail: LotDetail }) => (
  <Page
    title={words.title(detail.lot.number)}
    above={
      <>
        {words.title(detail.lot.number)},{' '}
        <Link to="/shelf/items/$kind/$id" params={{ kind: detail.lot.itemKind, id: detail.lot.itemId }}>
          {detail.lot.itemName}
        </Link>{' '}
        · <LotState lot={detail.lot} />
      </>
    }
    says={lotInWords(detail.lot)}
    soft={<FirmTime lot={detail.lot} />}
    actions={<LotActions detail={detail} />}
  >
    <LotFactsList detail={detail} />
    {detail.lot.itemKind === 'material' && detail.lot.unit === 'g' && <CertificateCard lot={detail.lot} />}
    <Card title={words.movements} isFlush={detail.movements.length > 0}>
      <LotMovements movements={detail.movements} />
    </Card>
  </Page>
);

/** A base that sets says when it should be firm; one that is kept, when it is looked at again. */
function FirmTime({ lot: { status, firmFrom, firmTo, keepUntil } }: { readonly lot: Lot }) {
  const timeZone = useTimeZone();
  if (status === 'quarantine' && firmFrom !== null && firmTo !== null) {
    return words.firm(sayRange(firmFrom, firmTo, timeZone));
  }
  return keepUntil === null ? null : words.lookAgain(sayDateWithYear(keepUntil));
}
