import { useState } from 'react';
import { labelWords, sayNumber } from '../../../words/index.ts';
import { Field } from '../../parts/field.tsx';
import { PrintLink } from '../../parts/print-link.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { readWhole } from '../../show/read-whole.ts';
import type { Run } from '../filling/run-page.tsx';
import type { Label } from './label-page.tsx';

interface Props {
  readonly run: Run;
  readonly label: Label;
}

/** Printing is offered only where nothing is missing. */
export function PrintLabel({ run, label }: Props) {
  const [copies, setCopies] = useState('1');
  const read = readWhole(copies, 'copies');
  const isReady = label.missing.length === 0 && read.ok && read.value > 0;
  return (
    <>
      <SideBySide>
        <Field label={labelWords.copies} where="copies" kind="whole" value={copies} onChange={setCopies} />
      </SideBySide>
      {isReady && (
        <div>
          <PrintLink
            isAct
            paper="getRunLabelPdf"
            address={{ params: { id: run.id }, query: { market: label.market, copies: String(read.value) } }}
          >
            {labelWords.print}
          </PrintLink>
        </div>
      )}
      <p className="soft">
        {labelWords.figure(sayNumber(label.figureHeightMm))} {labelWords.checkAgain}
      </p>
    </>
  );
}
