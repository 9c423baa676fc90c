import { useState } from 'react';
import { checkWords, labelWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useRead } from '../../api/use-read.ts';
import { useRest } from '../../api/use-rest.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { List } from '../../parts/list.tsx';
import { Moment } from '../../parts/moment.tsx';
import { PrintLink } from '../../parts/print-link.tsx';
import { Select } from '../../parts/select.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { State } from '../../parts/state.tsx';
import { Table } from '../../parts/table.tsx';
import { readWhole } from '../../show/read-whole.ts';
import type { Run } from '../filling/run.ts';
import styles from './label.module.css';
import type { LabelCounts } from './label.ts';

const { counts: words } = labelWords;

/** Labels of a run: printed, on tins, spoilt, left over, and whether that adds up. */
export function CountsCard({ run }: { readonly run: Run }) {
  const counts = useRead('getLabelCounts', { params: { id: run.id } }).data;
  if (!counts) return null;
  return (
    <Card title={words.title} anchor="counts" isFlush>
      <p className={styles.copy}>
        <Sentence saying={counts.says} />
      </p>
      <Table
        caption={words.title}
        isCaptionHidden
        rows={counts.rows}
        keyOf={({ pieceId }) => pieceId}
        columns={[
          { head: words.kind, cell: ({ role }) => labelWords.roles[role] },
          { head: words.printed, cell: ({ printed }) => printed, isNumber: true },
          {
            head: words.used,
            cell: ({ used, isCounted }) => (isCounted ? used : words.uncounted),
            isNumber: true,
          },
          {
            head: words.spoilt,
            cell: ({ spoilt, isCounted }) => (isCounted ? spoilt : words.uncounted),
            isNumber: true,
          },
          {
            head: words.left,
            cell: ({ left, isCounted }) => (isCounted ? left : words.uncounted),
            isNumber: true,
          },
          { head: words.answer, cell: (row) => <Answer row={row} /> },
        ]}
      />
      {counts.tins !== null && (
        <div className={styles.foot}>
          <CountForm counts={counts} />
        </div>
      )}
      {counts.prints.length > 0 && <Prints counts={counts} />}
    </Card>
  );
}

const Answer = ({ row }: { readonly row: LabelCounts['rows'][number] }) => (
  <>
    <State kind={!row.isCounted ? 'plain' : row.isSound ? 'ready' : 'watch'}>
      <Sentence saying={row.says} />
    </State>
    {row.at !== null && (
      <span className="soft small">
        {' '}
        {row.by}, <Moment at={row.at} />
        {row.remark !== '' && `: ${row.remark}`}
      </span>
    )}
  </>
);

function CountForm({ counts }: { readonly counts: LabelCounts }) {
  const [chosen, setChosen] = useState('');
  const row = counts.rows.find(({ pieceId }) => pieceId === chosen) ?? counts.rows[0];
  const [typed, setTyped] = useState<{ used?: string; spoilt?: string; remark: string }>({ remark: '' });
  const save = useWrite('countLabels');
  const rest = useRest();
  if (!row) return null;
  const used = typed.used ?? String(row.used);
  const spoilt = typed.spoilt ?? String(row.spoilt);
  async function submit(pieceId: string) {
    const [on, off] = [readWhole(used, 'used'), readWhole(spoilt, 'spoilt')];
    if (!on.ok || !off.ok)
      return save.refuse([...(on.ok ? [] : on.problems), ...(off.ok ? [] : off.problems)]);
    const body = { pieceId, used: on.value, spoilt: off.value, remark: typed.remark };
    if (rest.isOn() || !(await save.write({ params: { id: counts.runId }, body }))) return;
    rest.begin();
    setTyped({ remark: '' });
    tell(words.saved);
  }
  return (
    <Form label={words.count} problems={save.problems} onSubmit={() => void submit(row.pieceId)}>
      <SideBySide>
        <Select
          label={words.which}
          where="pieceId"
          value={row.pieceId}
          onChange={(pieceId) => {
            setChosen(pieceId);
            setTyped({ remark: '' });
          }}
          choices={counts.rows.map(({ pieceId, role }) => ({ id: pieceId, name: labelWords.roles[role] }))}
        />
        <Field
          label={words.used}
          where="used"
          kind="whole"
          value={used}
          onChange={(text) => setTyped((now) => ({ ...now, used: text }))}
        />
        <Field
          label={words.spoilt}
          where="spoilt"
          kind="whole"
          value={spoilt}
          onChange={(text) => setTyped((now) => ({ ...now, spoilt: text }))}
        />
        <Field
          label={words.remark}
          hint={words.remarkHint}
          where="remark"
          value={typed.remark}
          onChange={(remark) => setTyped((now) => ({ ...now, remark }))}
          isOptional
        />
      </SideBySide>
      <FormActions>
        <Button type="submit" isBusy={save.isBusy}>
          {words.save}
        </Button>
      </FormActions>
    </Form>
  );
}

const Prints = ({ counts }: { readonly counts: LabelCounts }) => (
  <div className={styles.prints}>
    <h3>{words.prints}</h3>
    <List rows={counts.prints} keyOf={({ id }) => id} empty="">
      {(print) => (
        <div className={styles.print}>
          <span>
            {words.printOf(
              print.copies,
              print.pieces.map((role) => labelWords.roles[role]).join(', '),
              checkWords.market[print.market],
              print.sheet ?? labelWords.plainPaper,
              print.firstPosition,
            )}
            <span className="soft">
              {' '}
              {print.by}, <Moment at={print.at} />
            </span>
          </span>
          <PrintLink paper="getLabelPrintPdf" address={{ params: { id: print.id } }} isPlain>
            {words.again}
          </PrintLink>
        </div>
      )}
    </List>
  </div>
);
