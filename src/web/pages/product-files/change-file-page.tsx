import { productFileWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useEditing } from '../../api/use-editing.ts';
import { useRead } from '../../api/use-read.ts';
import { useUnsaved } from '../../api/use-unsaved.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Conflict } from '../../parts/conflict.tsx';
import { Form } from '../../parts/form.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Page } from '../../shell/page.tsx';
import { useGoTo } from '../../shell/use-go-to.ts';
import { useParam } from '../../shell/use-param.ts';
import { ClaimFields } from './claim-fields.tsx';
import { describeFile, draftOfFile, type FileView, readFileDraft } from './file-draft.ts';
import { NotificationFields } from './notification-fields.tsx';
import { FunctionFields, WrittenFields } from './written-fields.tsx';

const { form: words } = productFileWords;

export function ChangeFilePage() {
  const id = useParam('id');
  return (
    <Loaded key={id} read={useRead('getProductFile', { params: { id } })} title={productFileWords.title}>
      {(file) => <ChangeFile file={file} />}
    </Loaded>
  );
}

/** What only a person can write; what the data knows is not asked again. */
function ChangeFile({ file }: { readonly file: FileView }) {
  const editing = useEditing({ ...file, version: file.version ?? 0 }, draftOfFile);
  const save = useWrite('saveProductFile');
  const letGo = useUnsaved(editing.isChanged, save);
  const goTo = useGoTo();
  async function submit() {
    const version = editing.version === 0 ? null : editing.version;
    const body = { version, details: readFileDraft(editing.draft) };
    if (!(await save.write({ params: { id: file.productId }, body }))) return;
    letGo();
    tell(words.saved);
    goTo(`/products/${file.productId}/file`);
  }
  return (
    <Page title={words.title(file.productName)} above={file.productName} soft={words.soft} isNarrow>
      <Conflict problems={save.problems} editing={editing} describe={describeFile} onChosen={save.forget} />
      <Form label={words.label} problems={save.problems} onSubmit={() => void submit()}>
        <WrittenFields part="description" editing={editing} />
        <FunctionFields editing={editing} file={file} />
        <WrittenFields part="physical" editing={editing} />
        <WrittenFields part="microbiology" editing={editing} />
        <WrittenFields part="impurities" editing={editing} />
        <WrittenFields part="use" editing={editing} exposureTypes={file.exposureTypes} />
        <WrittenFields part="information" editing={editing} />
        <WrittenFields part="method" editing={editing} />
        <ClaimFields editing={editing} file={file} />
        <WrittenFields part="animal-testing" editing={editing} />
        <NotificationFields editing={editing} />
        <FormActions>
          <Button type="submit" isAct isBusy={save.isBusy}>
            {words.save}
          </Button>
        </FormActions>
      </Form>
    </Page>
  );
}
