import { workshopWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useEditing } from '../../api/use-editing.ts';
import { useUnsaved } from '../../api/use-unsaved.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { Conflict } from '../../parts/conflict.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { typedDecimalOrNull } from '../../show/typed-decimal.ts';
import { AddressFields } from './address-fields.tsx';
import type { WorkshopDetails } from './workshop.ts';

interface Props {
  readonly details: WorkshopDetails;
  readonly version: number;
}

const { details: words } = workshopWords;

const describe = (details: WorkshopDetails) =>
  [
    [words.name, details.name],
    [words.gb, `${details.responsibleGb.name}, ${details.responsibleGb.address}`],
    [words.eu, `${details.responsibleEu.name}, ${details.responsibleEu.address}`],
    [
      words.us,
      `${details.responsibleUs.name}, ${details.responsibleUs.address}, ${details.responsibleUs.contact}`,
    ],
    [words.codeDomain, details.codeDomain],
    [words.currency, details.currency],
    [words.country, details.country],
    [words.timeZone, details.timeZone],
    [words.bowl, details.bowlGrams],
    [words.bowlMl, details.bowlMl],
    [words.backupFolder, details.backupFolder],
  ] as const;

export function DetailsCard({ details, version }: Props) {
  const editing = useEditing({ details, version }, (thing) => thing.details);
  const { draft, set } = editing;
  const save = useWrite('changeWorkshop');
  useUnsaved(editing.isChanged, save);
  const submit = async () => {
    const bowlGrams = typedDecimalOrNull(draft.bowlGrams) ?? '';
    const bowlMl = typedDecimalOrNull(draft.bowlMl) ?? '';
    const body = { version: editing.version, details: { ...draft, bowlGrams, bowlMl } };
    const saved = await save.write({ body });
    if (!saved) return;
    tell(words.saved);
    editing.seen({ details: saved.details ?? draft, version: saved.version });
  };
  return (
    <Card title={words.title} anchor="details">
      <Conflict problems={save.problems} editing={editing} describe={describe} onChosen={save.forget} />
      <Form label={words.form} problems={save.problems} onSubmit={() => void submit()}>
        <Field label={words.name} where="details.name" value={draft.name} onChange={set('name')} />
        <AddressFields
          title={words.gb}
          where="details.responsibleGb"
          value={draft.responsibleGb}
          onChange={set('responsibleGb')}
        />
        <AddressFields
          title={words.eu}
          where="details.responsibleEu"
          value={draft.responsibleEu}
          onChange={set('responsibleEu')}
        />
        <AddressFields
          title={words.us}
          where="details.responsibleUs"
          value={draft.responsibleUs}
          onChange={(address) => set('responsibleUs')({ ...draft.responsibleUs, ...address })}
        />
        <Field
          label={words.contact}
          where="details.responsibleUs.contact"
          value={draft.responsibleUs.contact}
          onChange={(contact) => set('responsibleUs')({ ...draft.responsibleUs, contact })}
          hint={words.contactHint}
          isOptional
        />
        <Field
          label={words.codeDomain}
          where="details.codeDomain"
          value={draft.codeDomain}
          onChange={set('codeDomain')}
          hint={words.codeDomainHint}
          isOptional
        />
        <SideBySide>
          <Field
            label={words.currency}
            where="details.currency"
            value={draft.currency}
            onChange={set('currency')}
          />
          <Field
            label={words.country}
            where="details.country"
            value={draft.country}
            onChange={set('country')}
          />
          <Field
            label={words.timeZone}
            where="details.timeZone"
            value={draft.timeZone}
            onChange={set('timeZone')}
            hint={words.timeZoneHint}
          />
          <Field
            label={words.bowl}
            where="details.bowlGrams"
            kind="decimal"
            unit="g"
            value={draft.bowlGrams}
            onChange={set('bowlGrams')}
            hint={words.bowlHint}
            isOptional
          />
          <Field
            label={words.bowlMl}
            where="details.bowlMl"
            kind="decimal"
            unit="ml"
            value={draft.bowlMl}
            onChange={set('bowlMl')}
            hint={words.bowlMlHint}
            isOptional
          />
        </SideBySide>
        <Field
          label={words.backupFolder}
          where="details.backupFolder"
          value={draft.backupFolder}
          onChange={set('backupFolder')}
          hint={words.backupFolderHint}
          isOptional
        />
        <div>
          <Button type="submit" isAct isBusy={save.isBusy}>
            {words.save}
          </Button>
        </div>
      </Form>
    </Card>
  );
}
