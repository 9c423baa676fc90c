import { Link } from '@tanstack/react-router';
import { checkWords } from '../../../words/index.ts';

interface Props {
  /** Of the sentence that it stands behind. */
  readonly code: string;
  readonly formulaId: string;
}

/** From what a report does not cover to where a report is entered or changed. */
export function ReportLink({ code, formulaId }: Props) {
  if (!code.startsWith('sale-report-')) return null;
  return code === 'sale-report-missing' ? (
    <Link to="/reports" search={{ formula: formulaId }}>
      {checkWords.enterReport}
    </Link>
  ) : (
    <Link to="/reports">{checkWords.toReports}</Link>
  );
}
