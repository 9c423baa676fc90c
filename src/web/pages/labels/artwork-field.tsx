import { useId } from 'react';
import { labelWords } from '../../../words/index.ts';
import { readBase64 } from '../../api/read-base64.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { buttonClass } from '../../parts/button-look.ts';
import { Field } from '../../parts/field.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { Problems } from '../../parts/problems.tsx';
import { Select } from '../../parts/select.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import type { PieceDraft } from './design-draft.ts';

interface Props {
  readonly productId: string;
  readonly name: string;
  readonly where: string;
  readonly value: PieceDraft['artwork'];
  readonly onChange: (artwork: PieceDraft['artwork']) => void;
}

const { design: words } = labelWords;
const USES = Object.entries(words.uses).map(([id, name]) => ({ id, name }));

/** The maker's own picture on a label. */
export function ArtworkField({ productId, name, where, value, onChange }: Props) {
  const id = useId();
  const attach = useWrite('attachLabelArtwork');
  async function take(file: File | undefined) {
    if (!file) return;
    const body = { name: file.name, base64: await readBase64(file) };
    const kept = await attach.write({ params: { id: productId }, body });
    if (kept) onChange({ use: 'background', bleedMm: '0', ...value, attachmentId: kept.id });
  }
  return (
    <>
      <Problems problems={attach.problems} />
      <FormActions>
        <label htmlFor={id} className={buttonClass({})}>
          {words.choosePicture}
          <span className="visually-hidden"> {name}</span>
        </label>
        <input
          id={id}
          className="visually-hidden"
          type="file"
          accept="image/png,image/jpeg"
          onChange={(event) => void take(event.target.files?.[0])}
        />
        {value && (
          <Button onPress={() => onChange(null)} label={`${words.takePictureOff}: ${name}`}>
            {words.takePictureOff}
          </Button>
        )}
      </FormActions>
      {value && (
        <SideBySide>
          <Select
            label={words.use}
            where={`${where}.use`}
            value={value.use}
            onChange={(use) => onChange({ ...value, use: use === 'whole-face' ? use : 'background' })}
            choices={USES}
          />
          <Field
            label={words.bleed}
            where={`${where}.bleedMm`}
            kind="decimal"
            unit="mm"
            value={value.bleedMm}
            onChange={(bleedMm) => onChange({ ...value, bleedMm })}
          />
        </SideBySide>
      )}
    </>
  );
}
