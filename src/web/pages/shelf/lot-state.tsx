import { shelfWords, termWords } from '../../../words/index.ts';
import { State, type StateKind } from '../../parts/state.tsx';
import type { Lot } from './shelf-item.ts';

const KIND: Readonly<Record<Lot['status'], StateKind>> = {
  released: 'ready',
  quarantine: 'going',
  rejected: 'stop',
  blocked: 'stop',
};

export const LotState = ({ lot }: { readonly lot: Lot }) =>
  lot.isExpired && lot.status === 'released' ? (
    <State kind="stop">{shelfWords.expired}</State>
  ) : (
    <State kind={KIND[lot.status]}>{termWords.lotStatus[lot.status]}</State>
  );
