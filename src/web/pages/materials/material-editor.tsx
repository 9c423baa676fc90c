import { materialWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useEditing } from '../../api/use-editing.ts';
import { useUnsaved } from '../../api/use-unsaved.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { Conflict } from '../../parts/conflict.tsx';
import { Form } from '../../parts/form.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { useGoTo } from '../../shell/use-go-to.ts';
import { describeMaterial } from './describe-material.ts';
import type { Material, MaterialDetails } from './material.ts';
import { draftOfMaterial, readMaterialDraft } from './material-draft.ts';
import { MaterialFields } from './material-fields.tsx';
import { sourceOf } from './source-of.ts';

interface Props {
  readonly first: MaterialDetails;
  /** Left out: a new one. */
  readonly material?: Material;
  /** By field: where what is filled in comes from. */
  readonly sources?: Readonly<Record<string, string>>;
}

const { form: words } = materialWords;

export function MaterialEditor({ first, material, sources = {} }: Props) {
  const editing = useEditing(material ?? { version: 0, details: first }, ({ details }) =>
    draftOfMaterial(details),
  );
  const save = useWrite('saveMaterial');
  const letGo = useUnsaved(editing.isChanged, save);
  const goTo = useGoTo();
  const submit = async () => {
    const read = readMaterialDraft(editing.draft);
    if (!read.ok) return save.refuse(read.problems);
    const which = material ? { id: material.id, version: editing.version } : {};
    if (!(await save.write({ body: { ...which, details: read.value } }))) return;
    letGo();
    tell(words.saved(read.value.name));
    goTo('/materials');
  };
  return (
    <Card>
      <Conflict
        problems={save.problems}
        editing={editing}
        describe={describeMaterial}
        onChosen={save.forget}
      />
      <Form label={words.label} problems={save.problems} onSubmit={() => void submit()}>
        <MaterialFields
          editing={editing}
          sourceOf={sourceOf(editing.draft, draftOfMaterial(first), sources)}
        />
        <FormActions>
          <Button type="submit" isAct isBusy={save.isBusy}>
            {words.save}
          </Button>
        </FormActions>
      </Form>
    </Card>
  );
}
