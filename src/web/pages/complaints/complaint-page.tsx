import { complaintWords, sayDateWithYear } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { Page } from '../../shell/page.tsx';
import { useParam } from '../../shell/use-param.ts';
import type { Complaint } from './complaint.ts';
import { ComplaintState } from './complaint-state.tsx';
import { FollowCard } from './follow-card.tsx';
import { TellCard } from './tell-card.tsx';

export function ComplaintPage() {
  const id = useParam('id');
  return (
    <Loaded read={useRead('getComplaint', { params: { id } })} title={complaintWords.title}>
      {(complaint) => <ComplaintView complaint={complaint} />}
    </Loaded>
  );
}

const ComplaintView = ({ complaint }: { readonly complaint: Complaint }) => (
  <Page
    title={`${complaintWords.title}: ${complaint.productName}`}
    above={<ComplaintState complaint={complaint} />}
    says={<Sentence saying={complaint.sentence} />}
    actions={
      <>
        {complaint.lotId !== null && (
          <LinkButton to={`/trace/${complaint.lotId}`}>{complaintWords.trace}</LinkButton>
        )}
        <LinkButton to={`/products/${complaint.productId}/file`}>{complaintWords.toFile}</LinkButton>
      </>
    }
    isNarrow
  >
    <TellCard complaint={complaint} />
    <Card title={complaintWords.facts}>
      <p>{complaint.details.said}</p>
      <p className="soft">
        {complaintWords.kinds[complaint.details.kind]} ·{' '}
        {complaint.batchNumber ?? complaintWords.noBatchShort} ·{' '}
        {complaintWords.received(sayDateWithYear(complaint.receivedOn))}
        {complaint.details.happenedIn && ` · ${complaintWords.places[complaint.details.happenedIn]}`}
        {complaint.marks.length > 0 &&
          ` · ${complaint.marks.map((mark) => complaintWords.markNames[mark]).join(', ')}`}
      </p>
    </Card>
    <FollowCard complaint={complaint} />
  </Page>
);
