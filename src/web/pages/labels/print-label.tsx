import { useState } from 'react';
import { labelWords, sayNumber } from '../../../words/index.ts';
import { requestUrl } from '../../api/request-url.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { PrintLink } from '../../parts/print-link.tsx';
import { Problems } from '../../parts/problems.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { readWhole } from '../../show/read-whole.ts';
import type { Run } from '../filling/run.ts';
import type { Label } from './label.ts';

interface Props {
  readonly run: Run;
  readonly label: Label;
}

/** Printing is offered only where nothing is missing. */
export function PrintLabel({ run, label }: Props) {
  const [copies, setCopies] = useState('1');
  const read = readWhole(copies, 'copies', 1);
  const print = useWrite('printRunLabels');
  const [paper, setPaper] = useState<{ readonly id: string; readonly market: string } | null>(null);
  const isReady = label.missing.length === 0 && read.ok && read.value > 0;
  const printNow = async (count: number) => {
    const { market } = label;
    const made = await print.write({ params: { id: run.id }, body: { market, copies: count } });
    if (!made) return;
    setPaper({ id: made.id, market });
    // Where the browser opens nothing by itself, the link beside the button does.
    window.open(requestUrl('getLabelPrintPdf', { params: { id: made.id } }), '_blank', 'noopener');
  };
  return (
    <>
      <SideBySide>
        <Field
          label={labelWords.copies}
          where="copies"
          kind="whole"
          least={1}
          value={copies}
          onChange={setCopies}
        />
      </SideBySide>
      {isReady && (
        <FormActions>
          <Button isAct isBusy={print.isBusy} onPress={() => void printNow(read.value)}>
            {labelWords.print}
          </Button>
          {paper?.market === label.market && (
            <PrintLink paper="getLabelPrintPdf" address={{ params: { id: paper.id } }}>
              {labelWords.openPrint}
            </PrintLink>
          )}
        </FormActions>
      )}
      <Problems problems={print.problems} />
      <p className="soft">
        {labelWords.figure(sayNumber(label.figureHeightMm))} {labelWords.checkAgain}
      </p>
    </>
  );
}
