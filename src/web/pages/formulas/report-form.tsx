import { formulaWords, partWords, reportWords, termWords } from '../../../words/index.ts';
import type { BodyOf } from '../../api/shapes.ts';
import { useDraft } from '../../api/use-draft.ts';
import { useRead } from '../../api/use-read.ts';
import { useUnsaved } from '../../api/use-unsaved.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { CheckBoxes } from '../../parts/check-boxes.tsx';
import { DateField } from '../../parts/date-field.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { Select } from '../../parts/select.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { Page } from '../../shell/page.tsx';
import { typedDecimal } from '../../show/typed-decimal.ts';
import type { Formula } from './formula.ts';
import { listCovered, rowsFor } from './list-covered.ts';
import type { Report } from './report.ts';
import { ReportRanges } from './report-ranges.tsx';

type Details = BodyOf<'saveReport'>['details'];

interface Props {
  readonly report: Report | null;
  /** What a new report is entered for. */
  readonly covers?: Formula;
  readonly onDone: () => void;
}

const MARKETS = Object.entries(termWords.market).map(([id, name]) => ({ id, name }));
const USES = Object.entries(formulaWords.uses).map(([id, name]) => ({ id, name }));
const NONE: readonly Formula[] = [];
const EMPTY: Details = {
  reference: '',
  assessor: '',
  signedOn: '',
  reviewBy: '',
  baseFormulaId: null,
  formulaIds: [],
  productIds: [],
  markets: ['GB'],
  uses: ['leave-on'],
  ranges: [],
};

/** A mixture with the base that it names, or the base by itself. */
function emptyFor(covers: Formula | undefined): Details {
  if (!covers) return EMPTY;
  if (covers.kind === 'base') return { ...EMPTY, baseFormulaId: covers.id };
  const base = covers.latest?.lines.find((line) => line.itemKind === 'formula');
  return { ...EMPTY, baseFormulaId: base?.itemId ?? null, formulaIds: [covers.id] };
}

/** What the report covers, as it is written there. */
export function ReportForm({ report, covers, onDone }: Props) {
  const { draft, setDraft, set, isChanged } = useDraft<Details>(report?.details ?? emptyFor(covers));
  const formulas = useRead('listFormulas').data ?? NONE;
  const materials = useRead('listMaterials').data ?? [];
  const covered = listCovered(formulas, draft);
  // Those of a mixture that it was opened for come with the formulas.
  const ranges = report === null && draft.ranges.length === 0 ? rowsFor([], covered) : draft.ranges;
  const cover = (part: Partial<Details>) => {
    const next = { ...draft, ...part };
    setDraft({ ...next, ranges: rowsFor(ranges, listCovered(formulas, next)) });
  };
  const products = useRead('listProducts').data ?? [];
  const save = useWrite('saveReport');
  const letGo = useUnsaved(isChanged, save);
  const title = report?.details.reference ?? reportWords.add;
  async function submit() {
    const details = {
      ...draft,
      ranges: ranges.map((row) => ({
        ...row,
        leastPercent: typedDecimal(row.leastPercent),
        mostPercent: typedDecimal(row.mostPercent),
      })),
    };
    const kept = await save.write({
      body: report ? { id: report.id, version: report.version, details } : { details },
    });
    if (!kept) return;
    letGo();
    onDone();
  }
  return (
    <Page title={title} soft={reportWords.soft}>
      <Form
        label={title}
        problems={save.problems}
        onSubmit={() => void submit()}
        nameOf={({ where }) => {
          const row = ranges[Number(/^details\.ranges\[(\d+)\]/.exec(where)?.[1] ?? Number.NaN)];
          return materials.find(({ id }) => id === row?.materialId)?.details.name;
        }}
      >
        <SideBySide>
          <Field
            label={reportWords.reference}
            where="details.reference"
            value={draft.reference}
            onChange={set('reference')}
            isFirst
          />
          <Field
            label={reportWords.assessor}
            where="details.assessor"
            value={draft.assessor}
            onChange={set('assessor')}
          />
          <DateField
            label={reportWords.signedOn}
            where="details.signedOn"
            value={draft.signedOn}
            onChange={set('signedOn')}
          />
          <DateField
            label={reportWords.reviewBy}
            where="details.reviewBy"
            value={draft.reviewBy}
            onChange={set('reviewBy')}
          />
        </SideBySide>
        <Select
          label={reportWords.base}
          where="details.baseFormulaId"
          value={draft.baseFormulaId ?? ''}
          onChange={(id) => cover({ baseFormulaId: id === '' ? null : id })}
          none={reportWords.noBase}
          choices={formulas.filter((formula) => formula.kind === 'base')}
        />
        <CheckBoxes
          title={reportWords.formulas}
          choices={formulas.filter((formula) => formula.kind === 'mixture')}
          chosen={draft.formulaIds}
          onChange={(formulaIds) => cover({ formulaIds })}
        />
        {products.length > 0 && (
          <CheckBoxes
            title={reportWords.products}
            choices={products.map(({ id, details }) => ({ id, name: details.name }))}
            chosen={draft.productIds ?? []}
            onChange={set('productIds')}
          />
        )}
        <CheckBoxes
          title={reportWords.markets}
          choices={MARKETS}
          chosen={draft.markets}
          onChange={(chosen) => set('markets')(chosen as Details['markets'])}
        />
        <CheckBoxes
          title={reportWords.uses}
          choices={USES}
          chosen={draft.uses}
          onChange={(chosen) => set('uses')(chosen as Details['uses'])}
        />
        <ReportRanges ranges={ranges} onChange={set('ranges')} covered={covered} />
        <FormActions>
          <Button type="submit" isAct isBusy={save.isBusy}>
            {partWords.save}
          </Button>
          <Button onPress={onDone}>{partWords.cancel}</Button>
        </FormActions>
      </Form>
    </Page>
  );
}
