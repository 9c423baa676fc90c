import { complaintWords, sayDateWithYear } from '../../../words/index.ts';
import { LinkButton } from '../../parts/link-button.tsx';
import { ListFoot } from '../../parts/list-foot.tsx';
import { ListRow } from '../../parts/list-row.tsx';
import type { Complaint } from './complaint.ts';
import { ComplaintState } from './complaint-state.tsx';

export const ComplaintLine = ({ complaint }: { readonly complaint: Complaint }) => (
  <>
    <ListRow>
      <strong>
        {complaint.productName}: {complaintWords.kinds[complaint.details.kind]}
      </strong>
    </ListRow>
    <p className="soft">
      {complaint.batchNumber ?? complaintWords.noBatchShort} ·{' '}
      {complaintWords.received(sayDateWithYear(complaint.receivedOn))}
    </p>
    <p>{complaint.details.said}</p>
    <ListFoot>
      <ComplaintState complaint={complaint} />
      <LinkButton
        to={`/complaints/${complaint.id}`}
        label={`${complaintWords.look}: ${complaint.productName}, ${sayDateWithYear(complaint.receivedOn)}`}
      >
        {complaintWords.look}
      </LinkButton>
    </ListFoot>
  </>
);
