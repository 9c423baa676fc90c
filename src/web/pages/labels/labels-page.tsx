import { Link } from '@tanstack/react-router';
import { labelWords, makingWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { List } from '../../parts/list.tsx';
import { ListRow } from '../../parts/list-row.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Moment } from '../../parts/moment.tsx';
import { Page } from '../../shell/page.tsx';

export const LabelsPage = () => (
  <Loaded read={useRead('listRuns')} title={labelWords.title}>
    {(runs) => (
      <Page title={labelWords.title} says={labelWords.says(runs.length)}>
        <Card title={labelWords.title} isFlush>
          <List rows={runs} keyOf={(run) => run.id} empty={labelWords.empty}>
            {(run) => (
              <>
                <ListRow>
                  <Link to="/labels/$id" params={{ id: run.id }}>
                    {run.number} {run.productName}
                  </Link>
                  <span className="soft">{makingWords.runState[run.state]}</span>
                </ListRow>
                <p className="soft">
                  <Moment at={run.startedAt} />
                </p>
              </>
            )}
          </List>
        </Card>
      </Page>
    )}
  </Loaded>
);
