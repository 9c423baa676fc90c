import { useId, useState } from 'react';
import { certificateWords as words } from '../../../words/index.ts';
import { readBase64 } from '../../api/read-base64.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { buttonClass } from '../../parts/button-look.ts';
import { CheckBox } from '../../parts/check-box.tsx';
import { DateField } from '../../parts/date-field.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import {
  bodyOf,
  type Certificate,
  type CertificateDraft,
  draftOf,
  emptyCertificate,
} from './certificate-draft.ts';
import { ConstituentRows, StatementRows } from './certificate-rows.tsx';
import type { Lot } from './shelf-item.ts';

interface Props {
  readonly lot: Lot;
  /** The paper that is corrected; null: a further one. */
  readonly corrected: Certificate | null;
  readonly onClose: () => void;
}

/** What a supplier's paper says of one lot, copied from it. */
export function CertificateForm({ lot, corrected, onClose }: Props) {
  const [draft, setDraft] = useState<CertificateDraft>(() =>
    corrected ? draftOf(corrected) : emptyCertificate(),
  );
  const [file, setFile] = useState<File | null>(null);
  const earlierFile = corrected?.file?.name ?? null;
  const [keeps, setKeeps] = useState(earlierFile !== null);
  const [isTouched, setTouched] = useState(false);
  const save = useWrite('saveLotCertificate');
  const set =
    <Key extends keyof CertificateDraft>(key: Key) =>
    (value: CertificateDraft[Key]) => {
      setTouched(true);
      setDraft((now) => ({ ...now, [key]: value }));
    };
  async function submit() {
    const paper = file && { name: file.name, base64: await readBase64(file) };
    const body = { ...bodyOf(draft, paper, corrected?.id ?? null), keepsFile: keeps && file === null };
    if (await save.write({ params: { id: lot.id }, body })) onClose();
  }
  const title = corrected ? words.correctTitle(corrected.reference) : words.dialogTitle(lot.number);
  return (
    <Dialog title={title} isOpen isWide onClose={onClose} isHeld={isTouched}>
      <Form label={title} problems={save.problems} onSubmit={() => void submit()}>
        <p className="soft">{corrected ? words.correctSays : words.dialogSays}</p>
        <SideBySide>
          <Field
            label={words.reference}
            where="reference"
            value={draft.reference}
            onChange={set('reference')}
            hint={words.referenceHint}
            isFirst
          />
          <DateField
            label={words.datedOn}
            where="datedOn"
            value={draft.datedOn}
            onChange={set('datedOn')}
            isOptional
          />
        </SideBySide>
        <ConstituentRows draft={draft} set={set} />
        <CheckBox isChecked={draft.isComplete} onChange={set('isComplete')}>
          {words.isComplete}
        </CheckBox>
        <SideBySide>
          <Field
            label={words.peroxide}
            where="details.peroxide.mmolPerLitre"
            kind="decimal"
            unit={words.peroxideUnit}
            value={draft.peroxide}
            onChange={set('peroxide')}
            hint={words.peroxideHint}
            isOptional
          />
          <DateField
            label={words.measuredOn}
            where="details.peroxide.measuredOn"
            value={draft.measuredOn}
            onChange={set('measuredOn')}
            isOptional
          />
        </SideBySide>
        <StatementRows draft={draft} set={set} />
        <Field
          label={words.remark}
          where="details.remark"
          kind="long"
          value={draft.remark}
          onChange={set('remark')}
          isOptional
        />
        <ChooseFile file={file} onChoose={setFile} />
        {earlierFile !== null && file === null && (
          <CheckBox isChecked={keeps} onChange={setKeeps}>
            {words.keepsFile(earlierFile)}
          </CheckBox>
        )}
        <Button type="submit" isAct isBusy={save.isBusy}>
          {words.save}
        </Button>
      </Form>
    </Dialog>
  );
}

function ChooseFile({
  file,
  onChoose,
}: {
  readonly file: File | null;
  readonly onChoose: (file: File | null) => void;
}) {
  const id = useId();
  return (
    <div>
      <label htmlFor={id} className={buttonClass({})}>
        {words.file}
      </label>
      <input
        id={id}
        className="visually-hidden"
        type="file"
        accept="application/pdf"
        onChange={(event) => onChoose(event.target.files?.[0] ?? null)}
      />
      {file && <p aria-live="polite">{words.fileChosen(file.name)}</p>}
    </div>
  );
}
