import { labelWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useEditing } from '../../api/use-editing.ts';
import { useRead } from '../../api/use-read.ts';
import { useUnsaved } from '../../api/use-unsaved.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { CheckBox } from '../../parts/check-box.tsx';
import { Conflict } from '../../parts/conflict.tsx';
import { Form } from '../../parts/form.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { PrintLink } from '../../parts/print-link.tsx';
import { NotFound } from '../../shell/not-found.tsx';
import { Page } from '../../shell/page.tsx';
import { useGoTo } from '../../shell/use-go-to.ts';
import { useParam } from '../../shell/use-param.ts';
import styles from './label.module.css';
import type { LabelSheet } from './label.ts';
import { draftOfSheet, EMPTY_SHEET, readSheetDraft, type SheetDraft } from './sheet-draft.ts';
import { SheetFields, sheetFieldWords } from './sheet-fields.tsx';
import { SheetPicture } from './sheet-picture.tsx';

const { sheets: words } = labelWords;

export const NewSheetPage = () => (
  <Page title={words.newTitle} above={labelWords.title} says={words.newSays}>
    <SheetEditor />
  </Page>
);

export function SheetPage() {
  const id = useParam('id');
  return (
    <Loaded key={id} read={useRead('listLabelSheets')} title={words.title}>
      {(sheets) => {
        const sheet = sheets.find((one) => one.id === id);
        if (!sheet) return <NotFound />;
        const { name, geometry } = sheet.details;
        return (
          <Page
            title={name}
            above={labelWords.title}
            says={words.says(name, geometry.columns * geometry.rows)}
            soft={words.trialHint}
            actions={
              <PrintLink paper="getSheetTrialPdf" address={{ params: { id } }}>
                {words.trial}
              </PrintLink>
            }
          >
            <SheetEditor sheet={sheet} />
          </Page>
        );
      }}
    </Loaded>
  );
}

const describe = (draft: SheetDraft) => [
  [words.name, draft.name] as const,
  ...sheetFieldWords.map(([field, label]) => [label, draft[field]] as const),
  [words.takenOut, draft.isTakenOut ? 'yes' : 'no'] as const,
];

function SheetEditor({ sheet }: { readonly sheet?: LabelSheet }) {
  const editing = useEditing(sheet ?? { version: 0, details: undefined }, ({ details }) =>
    details ? draftOfSheet(details) : EMPTY_SHEET,
  );
  const save = useWrite('saveLabelSheet');
  const letGo = useUnsaved(editing.isChanged, save);
  const goTo = useGoTo();
  const read = readSheetDraft({ ...editing.draft, name: editing.draft.name || '…' });
  async function submit() {
    const typed = readSheetDraft(editing.draft);
    if (!typed.ok) return save.refuse(typed.problems);
    const which = sheet ? { id: sheet.id, version: editing.version } : {};
    const kept = await save.write({ body: { ...which, details: typed.value } });
    if (!kept) return;
    letGo();
    tell(words.saved(typed.value.name));
    goTo('/labels');
  }
  return (
    <div className={styles.desk}>
      <Card title={words.form}>
        <Conflict problems={save.problems} editing={editing} describe={describe} onChosen={save.forget} />
        <Form label={words.form} problems={save.problems} onSubmit={() => void submit()}>
          <SheetFields editing={editing} />
          {sheet && (
            <CheckBox isChecked={editing.draft.isTakenOut} onChange={editing.set('isTakenOut')}>
              {words.takenOut}
            </CheckBox>
          )}
          <FormActions>
            <Button type="submit" isAct isBusy={save.isBusy}>
              {words.save}
            </Button>
          </FormActions>
        </Form>
      </Card>
      <div className={styles.beside}>
        <Card title={words.picture}>
          {read.ok && isDrawable(read.value.geometry) ? (
            <SheetPicture geometry={read.value.geometry} name={words.picture} />
          ) : (
            <p className="soft">{words.pictureWrong}</p>
          )}
        </Card>
      </div>
    </div>
  );
}

/** Whether it fits is judged when it is saved; what is drawn here shows why it may not. */
const isDrawable = ({ columns, rows, pageWidthMm, pageHeightMm }: LabelSheet['details']['geometry']) =>
  columns <= 50 && rows <= 50 && pageWidthMm > 0 && pageHeightMm > 0;
