import { useState } from 'react';
import { shelfWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Button } from '../../parts/button.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { BookOut } from './book-out.tsx';
import { CorrectLot } from './correct-lot.tsx';
import { firmWordWanted } from './firm-word-wanted.ts';
import { SayFirm } from './say-firm.tsx';
import { SetStatus } from './set-status.tsx';
import type { LotDetail } from './shelf-item.ts';

const { lot: words } = shelfWords;
type Asked = 'book' | 'accept' | 'status' | 'correct' | 'firm' | null;

/** The means to act on a lot. Waiting for a person's word comes first, since nothing goes on without it. */
export function LotActions({ detail }: { readonly detail: LotDetail }) {
  const [asked, setAsked] = useState<Asked>(null);
  const { lot } = detail;
  const close = () => setAsked(null);
  const waitsForPaper = lot.status === 'quarantine' && lot.itemKind === 'material';
  const today = useRead('getWorkshop').data?.today ?? '';
  const word = firmWordWanted(lot, today);
  return (
    <>
      {word !== null && (
        <Button isAct onPress={() => setAsked('firm')}>
          {word === 'firm' ? words.sayFirm : words.lookedAgain}
        </Button>
      )}
      {waitsForPaper && (
        <Button isAct onPress={() => setAsked('accept')}>
          {words.accept}
        </Button>
      )}
      <LinkButton to={`/shelf/lots/${lot.id}/weigh`}>
        {lot.unit === 'g' ? words.weigh : words.count}
      </LinkButton>
      <Button onPress={() => setAsked('book')}>{words.book}</Button>
      <Button onPress={() => setAsked('status')}>{words.status}</Button>
      {lot.itemKind === 'material' && <Button onPress={() => setAsked('correct')}>{words.correct}</Button>}
      <LinkButton to={`/trace/${lot.id}`}>{words.trace}</LinkButton>
      {asked === 'book' && <BookOut detail={detail} onClose={close} />}
      {asked === 'accept' && <SetStatus lot={lot} first="released" onClose={close} />}
      {asked === 'status' && <SetStatus lot={lot} onClose={close} />}
      {asked === 'correct' && <CorrectLot lot={lot} onClose={close} />}
      {asked === 'firm' && <SayFirm lotId={lot.id} onClose={close} />}
    </>
  );
}
