import { complaintWords } from '../../../words/index.ts';
import { Card } from '../../parts/card.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import type { Complaint } from './complaint.ts';

/** Whom the law wants told of a serious effect, and by when. */
export function TellCard({ complaint: { effect, tellings } }: { readonly complaint: Complaint }) {
  if (effect === 'none') return null;
  return (
    <Card title={complaintWords.tell}>
      {effect === 'undesirable' && <p>{complaintWords.tellNone}</p>}
      {effect === 'serious' && tellings.length === 0 && <p>{complaintWords.tellNotHere}</p>}
      {tellings.map((telling) => (
        <div key={telling.market}>
          <State kind={telling.isPast ? 'stop' : 'watch'}>
            <Sentence saying={telling.says} />
          </State>
          <p className="soft small">
            {complaintWords.sourceOf(telling.source)}
            {telling.confidence === 'memory' && ` (${complaintWords.fromMemory})`}
          </p>
        </div>
      ))}
      {tellings.length > 0 && <p className="soft">{complaintWords.tellNote}</p>}
    </Card>
  );
}
