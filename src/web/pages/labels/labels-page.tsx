import { Link } from '@tanstack/react-router';
import { labelWords, makingWords } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { List } from '../../parts/list.tsx';
import { ListFoot } from '../../parts/list-foot.tsx';
import { ListRow } from '../../parts/list-row.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Moment } from '../../parts/moment.tsx';
import { State } from '../../parts/state.tsx';
import { Page } from '../../shell/page.tsx';
import type { Run } from '../filling/run.ts';
import { tinsOf } from './copies.ts';
import styles from './label.module.css';

/** The label desk: runs that need labels, how products are labelled, which sheets there are. */
export const LabelsPage = () => (
  <Loaded read={useRead('listRuns')} title={labelWords.title}>
    {(runs) => {
      const waiting = runs.filter((run) => run.state !== 'rejected' && run.labelsPrinted < tinsOf(run));
      const labelled = runs.filter((run) => !waiting.includes(run));
      return (
        <Page
          title={labelWords.title}
          says={runs.length === 0 ? labelWords.none : labelWords.says(waiting.length)}
          soft={labelWords.deskSoft}
        >
          <Card title={labelWords.waiting} isFlush>
            <Runs runs={waiting} empty={runs.length === 0 ? labelWords.empty : labelWords.noneWaits} />
          </Card>
          {labelled.length > 0 && (
            <Card title={labelWords.labelled} isFlush>
              <Runs runs={labelled} empty={labelWords.none} />
            </Card>
          )}
          <Designs />
          <Sheets />
        </Page>
      );
    }}
  </Loaded>
);

const Runs = ({ runs, empty }: { readonly runs: readonly Run[]; readonly empty: string }) => (
  <List rows={runs} keyOf={(run) => run.id} empty={empty}>
    {(run) => (
      <>
        <ListRow>
          <Link to="/labels/$id" params={{ id: run.id }}>
            {run.number} {run.productName}
          </Link>
          <span className="soft">{makingWords.runState[run.state]}</span>
        </ListRow>
        <p className="soft">
          <Moment at={run.startedAt} />; {labelWords.waitsFor(run.labelsPrinted, tinsOf(run))}
        </p>
      </>
    )}
  </List>
);

type Design = AnswerOf<'listLabelDesigns'>[number];
const { design: designWords, sheets: sheetWords } = labelWords;

const describePieces = ({ pieces, hasLeaflet }: Design): string =>
  [...pieces, ...(hasLeaflet ? (['leaflet'] as const) : [])].map((role) => labelWords.roles[role]).join(', ');

function Designs() {
  const designs = useRead('listLabelDesigns').data ?? [];
  return (
    <Card title={designWords.title} isFlush>
      <List rows={designs} keyOf={({ productId }) => productId} empty={designWords.none}>
        {(design) => (
          <>
            <ListRow>
              <strong>{design.productName}</strong>
              <State kind={design.isDesigned ? 'ready' : 'plain'}>
                {design.isDesigned ? designWords.designed : designWords.asEntered}
              </State>
            </ListRow>
            <ListFoot>
              <span className="soft">{describePieces(design)}</span>
              <LinkButton
                to={`/labels/products/${design.productId}`}
                label={`${designWords.look}: ${design.productName}`}
              >
                {designWords.look}
              </LinkButton>
            </ListFoot>
          </>
        )}
      </List>
    </Card>
  );
}

function Sheets() {
  const sheets = useRead('listLabelSheets').data ?? [];
  return (
    <Card title={sheetWords.title} isFlush>
      <List rows={sheets} keyOf={({ id }) => id} empty={sheetWords.none}>
        {({ id, details: { name, geometry, isTakenOut } }) => (
          <>
            <ListRow>
              <strong>{name}</strong>
              <span className="soft">
                {isTakenOut ? sheetWords.takenOut : sheetWords.count(geometry.columns * geometry.rows)}
              </span>
            </ListRow>
            <ListFoot>
              <span />
              <LinkButton to={`/labels/sheets/${id}`} label={`${sheetWords.look}: ${name}`}>
                {sheetWords.look}
              </LinkButton>
            </ListFoot>
          </>
        )}
      </List>
      <p className={styles.foot}>
        <LinkButton to="/labels/sheets/new">{sheetWords.add}</LinkButton>
      </p>
    </Card>
  );
}
