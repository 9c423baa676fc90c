import { checkWords, cutPercent, sayDateWithYear } from '../../../words/index.ts';
import { Card } from '../../parts/card.tsx';
import { State } from '../../parts/state.tsx';
import { Table } from '../../parts/table.tsx';
import type { Check } from './check.ts';
import { ReportLink } from './report-link.tsx';

interface Props {
  readonly check: Check;
  readonly formulaId: string;
}

/** Formula against the assessor's ranges, material by material. */
export const ReportCard = ({ check: { report }, formulaId }: Props) => (
  <Card title={checkWords.report} isFlush={report !== null}>
    {report === null ? (
      <State kind="stop">
        {checkWords.noReport} <ReportLink code="sale-report-missing" formulaId={formulaId} />
      </State>
    ) : (
      <>
        <Table
          caption={checkWords.reportLine(report.reference, sayDateWithYear(report.reviewBy))}
          rows={report.rows}
          keyOf={(row) => row.material}
          columns={[
            { head: checkWords.substance, cell: (row) => row.material },
            {
              head: '%',
              cell: (row) => cutPercent(row.percent, [row.leastPercent, row.mostPercent]),
              isNumber: true,
            },
            {
              head: checkWords.report,
              cell: (row) => (
                <>
                  <span className="small">{checkWords.range(row.leastPercent, row.mostPercent)}</span>
                  <br />
                  <State kind={row.verdict === 'within' ? 'ready' : 'stop'}>
                    {checkWords.reportVerdicts[row.verdict]}
                  </State>
                </>
              ),
            },
          ]}
        />
        {report.isPast && <State kind="stop">{checkWords.reportPast}</State>}
      </>
    )}
  </Card>
);
