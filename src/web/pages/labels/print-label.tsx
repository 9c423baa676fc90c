import { useState } from 'react';
import { labelWords, sayNumber } from '../../../words/index.ts';
import { requestUrl } from '../../api/request-url.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { PrintLink } from '../../parts/print-link.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import type { Run } from '../filling/run.ts';
import { copiesWanted, readCopies } from './copies.ts';
import type { Label } from './label.ts';

interface Props {
  readonly run: Run;
  readonly label: Label;
}

/** Printing is offered only where nothing is missing. */
export function PrintLabel({ run, label }: Props) {
  // What is typed stands until it is printed; then the tins that are left are offered again.
  const [typed, setTyped] = useState<string | null>(null);
  const copies = typed ?? String(copiesWanted(run));
  const print = useWrite('printRunLabels');
  const [paper, setPaper] = useState<{ readonly id: string; readonly market: string } | null>(null);
  async function printNow() {
    const read = readCopies(copies);
    if (!read.ok) return print.refuse(read.problems);
    const { market } = label;
    const made = await print.write({ params: { id: run.id }, body: { market, copies: read.value } });
    if (!made) return;
    setTyped(null);
    setPaper({ id: made.id, market });
    // Where the browser opens nothing by itself, the link beside the button does.
    window.open(requestUrl('getLabelPrintPdf', { params: { id: made.id } }), '_blank', 'noopener');
  }
  return (
    <>
      {label.missing.length === 0 && (
        <Form label={labelWords.print} problems={print.problems} onSubmit={() => void printNow()}>
          <SideBySide>
            <Field
              label={labelWords.copies}
              where="copies"
              kind="whole"
              least={1}
              value={copies}
              onChange={setTyped}
              hint={labelWords.copiesHint(run.labelsPrinted)}
            />
          </SideBySide>
          <FormActions>
            <Button type="submit" isAct isBusy={print.isBusy}>
              {labelWords.print}
            </Button>
            {paper?.market === label.market && (
              <PrintLink paper="getLabelPrintPdf" address={{ params: { id: paper.id } }}>
                {labelWords.openPrint}
              </PrintLink>
            )}
          </FormActions>
        </Form>
      )}
      <p className="soft">
        {labelWords.figure(sayNumber(label.figureHeightMm))} {labelWords.checkAgain}
      </p>
    </>
  );
}
