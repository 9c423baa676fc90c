import { complaintWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { List } from '../../parts/list.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Page } from '../../shell/page.tsx';
import { ComplaintLine } from './complaint-line.tsx';

export const ComplaintsPage = () => (
  <Loaded read={useRead('listComplaints', { query: {} })} title={complaintWords.title}>
    {(complaints) => (
      <Page
        title={complaintWords.title}
        says={complaintWords.says(
          complaints.length,
          complaints.filter(({ state }) => state === 'open').length,
        )}
        soft={complaintWords.soft}
        actions={
          <LinkButton to="/complaints/new" isAct>
            {complaintWords.add}
          </LinkButton>
        }
        isNarrow
      >
        <Card isFlush>
          <List rows={complaints} keyOf={({ id }) => id} empty={complaintWords.empty}>
            {(complaint) => <ComplaintLine complaint={complaint} />}
          </List>
        </Card>
      </Page>
    )}
  </Loaded>
);
