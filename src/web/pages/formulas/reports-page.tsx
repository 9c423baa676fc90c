import { useSearch } from '@tanstack/react-router';
import { useState } from 'react';
import { checkWords, productFileWords, reportWords, sayDateWithYear } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { List } from '../../parts/list.tsx';
import { ListFoot } from '../../parts/list-foot.tsx';
import { ListRow } from '../../parts/list-row.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { PrintLink } from '../../parts/print-link.tsx';
import { State } from '../../parts/state.tsx';
import { Page } from '../../shell/page.tsx';
import { useGoTo } from '../../shell/use-go-to.ts';
import { AttachFile } from './attach-file.tsx';
import type { Report } from './report.ts';
import { ReportForm } from './report-form.tsx';

export function ReportsPage() {
  const { formula } = useSearch({ from: '/reports' });
  return formula === undefined ? <AllReports /> : <ReportFor key={formula} formulaId={formula} />;
}

const AllReports = () => (
  <Loaded read={useRead('listReports')} title={reportWords.title}>
    {(reports) => <ReportsView reports={reports} />}
  </Loaded>
);

/** From a check that found none: once it is entered, the check is looked at again. */
function ReportFor({ formulaId }: { readonly formulaId: string }) {
  const goTo = useGoTo();
  return (
    <Loaded read={useRead('getFormula', { params: { id: formulaId } })} title={reportWords.title}>
      {(formula) => (
        <ReportForm report={null} covers={formula} onDone={() => goTo(`/formulas/${formulaId}/check`)} />
      )}
    </Loaded>
  );
}

function ReportsView({ reports }: { readonly reports: readonly Report[] }) {
  const [edited, setEdited] = useState<Report | 'new' | null>(null);
  if (edited !== null)
    return <ReportForm report={edited === 'new' ? null : edited} onDone={() => setEdited(null)} />;
  return (
    <Page
      title={reportWords.title}
      says={reports.length === 0 ? reportWords.saysNone : reportWords.says(reports.length)}
      soft={reportWords.soft}
      actions={
        <Button isAct onPress={() => setEdited('new')}>
          {reportWords.add}
        </Button>
      }
    >
      <Card title={reportWords.title} isFlush>
        <List rows={reports} keyOf={(report) => report.id} empty={reportWords.empty}>
          {(report) => (
            <>
              <ListRow>
                <span>{report.details.reference}</span>
                <State kind={report.isPast ? 'stop' : report.isClose ? 'watch' : 'ready'}>
                  {report.isPast ? reportWords.past : report.isClose ? reportWords.close : reportWords.valid}
                </State>
              </ListRow>
              <p className="soft">
                {report.details.assessor} · {reportWords.reviewLine(sayDateWithYear(report.details.reviewBy))}{' '}
                · {report.file ? report.file.name : reportWords.noFile}
              </p>
              {report.outweighed.map(({ by, formula, markets }) => (
                <p key={`${by} ${formula}`}>
                  <State kind="plain">
                    {reportWords.outweighed(
                      by,
                      formula,
                      markets.map((market) => checkWords.market[market]).join(', '),
                    )}
                  </State>
                </p>
              ))}
              <ListFoot>
                {report.file ? (
                  <PrintLink paper="getReportFile" address={{ params: { id: report.id } }}>
                    {reportWords.openFile}
                  </PrintLink>
                ) : (
                  <AttachFile reportId={report.id} reference={report.details.reference} />
                )}
                <LinkButton
                  to={`/reports/${report.id}/changes`}
                  label={productFileWords.changes.openOf(report.details.reference)}
                >
                  {productFileWords.changes.open}
                </LinkButton>
                <Button
                  label={`${reportWords.change}: ${report.details.reference}`}
                  onPress={() => setEdited(report)}
                >
                  {reportWords.change}
                </Button>
              </ListFoot>
            </>
          )}
        </List>
      </Card>
    </Page>
  );
}
