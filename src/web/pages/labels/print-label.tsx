import { useState } from 'react';
import { labelWords, sayNumber } from '../../../words/index.ts';
import { requestUrl } from '../../api/request-url.ts';
import { useRead } from '../../api/use-read.ts';
import { useRest } from '../../api/use-rest.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { PrintLink } from '../../parts/print-link.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import { Select } from '../../parts/select.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import type { Run } from '../filling/run.ts';
import { copiesWanted, readCopies } from './copies.ts';
import type { Label, LabelCounts, LabelDesign, LabelSheet } from './label.ts';
import { printChoices, printedOf, usableOf } from './print-choices.ts';
import { SheetPicture } from './sheet-picture.tsx';

interface Props {
  readonly run: Run;
  readonly label: Label;
}

/** Printing is offered only where nothing is missing. */
export function PrintLabel({ run, label }: Props) {
  const design = useRead('getLabelDesign', { params: { id: run.productId } }).data;
  const sheets = useRead('listLabelSheets').data;
  const counts = useRead('getLabelCounts', { params: { id: run.id } }).data;
  return (
    <>
      {design && sheets && counts && (
        <PrintForm run={run} label={label} design={design} sheets={sheets} counts={counts} />
      )}
      <p className="soft">
        {labelWords.figure(sayNumber(label.figureHeightMm))} {labelWords.printAt}
      </p>
    </>
  );
}

interface FormProps extends Props {
  readonly design: LabelDesign;
  readonly sheets: readonly LabelSheet[];
  readonly counts: LabelCounts;
}

function PrintForm({ run, label, design, sheets, counts }: FormProps) {
  const choices = printChoices(label, design.details);
  const [what, setWhat] = useState(choices[0]?.id ?? '');
  const choice = choices.find(({ id }) => id === what) ?? choices[0];
  // What is typed stands until it is printed; then the tins that are left are offered again.
  const [typed, setTyped] = useState<string | null>(null);
  const [sheetChosen, setSheet] = useState<string | null>(null);
  const [firstChosen, setFirst] = useState<number | null>(null);
  const print = useWrite('printRunLabels');
  const rest = useRest();
  const [paper, setPaper] = useState<string | null>(null);
  if (!choice) return null;
  const printed = printedOf(choice.pieces, counts);
  const { spare } = design.details;
  const copies = typed ?? String(copiesWanted(run, usableOf(choice.pieces, counts), spare));
  const sheetId = sheetChosen ?? choice.sheetId;
  const sheet = sheets.find(({ id }) => id === sheetId);
  const first = firstChosen ?? sheet?.nextPosition ?? 1;
  const read = readCopies(copies);
  const labels = read.ok ? read.value * choice.pieces.length : 0;
  const choose = (id: string) => {
    setWhat(id);
    setSheet(null);
    setTyped(null);
    setFirst(null);
  };
  async function printNow(wished: NonNullable<typeof choice>) {
    if (rest.isOn()) return;
    if (!read.ok) return print.refuse(read.problems);
    const where = sheet ? { sheetId: sheet.id, firstPosition: first } : {};
    const body = { market: label.market, copies: read.value, pieces: [...wished.pieces], ...where };
    const made = await print.write({ params: { id: run.id }, body });
    if (!made) return;
    rest.begin();
    setTyped(null);
    // The list of sheets was asked anew: it knows where this print ended.
    setFirst(null);
    setPaper(made.id);
    // Where the browser opens nothing by itself, the link beside the button does.
    window.open(requestUrl('getLabelPrintPdf', { params: { id: made.id } }), '_blank', 'noopener');
  }
  return (
    <Form label={labelWords.print} problems={print.problems} onSubmit={() => void printNow(choice)}>
      {choices.length > 1 && (
        <RadioChoice title={labelWords.what} choices={choices} value={choice.id} onChange={choose} />
      )}
      <SideBySide>
        <Field
          label={labelWords.copies}
          where="copies"
          kind="whole"
          least={1}
          value={copies}
          onChange={setTyped}
          hint={labelWords.copiesSpare(printed, spare)}
        />
        <Select
          label={labelWords.sheet}
          where="sheetId"
          value={sheetId}
          onChange={(chosen) => {
            setSheet(chosen);
            setFirst(null);
          }}
          choices={sheets
            .filter(({ details }) => !details.isTakenOut)
            .map(({ id, details }) => ({ id, name: details.name }))}
          none={labelWords.plainPaper}
        />
      </SideBySide>
      {sheet && (
        <>
          <SideBySide>
            <Select
              label={labelWords.firstPosition}
              where="firstPosition"
              value={String(first)}
              onChange={(position) => setFirst(Number(position))}
              choices={positionsOf(sheet).map((number) => ({
                id: String(number),
                name: labelWords.position(number),
              }))}
              hint={`${labelWords.sheetTakes(labels, sheetsFor(sheet, first, labels))} ${labelWords.firstFree}`}
            />
          </SideBySide>
          <SheetPicture
            geometry={sheet.details.geometry}
            name={labelWords.firstPosition}
            first={first}
            count={labels}
            onChoose={setFirst}
          />
        </>
      )}
      <FormActions>
        <Button type="submit" isAct isBusy={print.isBusy}>
          {labelWords.print}
        </Button>
        {paper !== null && (
          <PrintLink paper="getLabelPrintPdf" address={{ params: { id: paper } }}>
            {labelWords.openPrint}
          </PrintLink>
        )}
      </FormActions>
    </Form>
  );
}

const perSheet = ({ details: { geometry } }: LabelSheet): number => geometry.columns * geometry.rows;
const positionsOf = (sheet: LabelSheet): number[] =>
  Array.from({ length: perSheet(sheet) }, (_, index) => index + 1);
const sheetsFor = (sheet: LabelSheet, first: number, labels: number): number =>
  Math.ceil((first - 1 + labels) / perSheet(sheet));
