import { productFileWords } from '../../../words/index.ts';
import type { Editing } from '../../api/use-editing.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { CheckBox } from '../../parts/check-box.tsx';
import { Field } from '../../parts/field.tsx';
import { Select } from '../../parts/select.tsx';
import type { FileDraft, FileView } from './file-draft.ts';
import styles from './product-files.module.css';

const { form: words } = productFileWords;
type Claim = FileDraft['claims'][number];

interface Props {
  readonly editing: Editing<FileDraft, never>;
  readonly file: FileView;
}

/** What is claimed, and what proves it; or that nothing is. */
export function ClaimFields({ editing: { draft, set }, file }: Props) {
  const files = file.chapters.find(({ key }) => key === 'claims')?.files ?? [];
  const change = (index: number, part: Partial<Claim>) =>
    set('claims')(draft.claims.map((one, at) => (at === index ? { ...one, ...part } : one)));
  return (
    <Card title={words.claims} anchor="claims">
      <CheckBox isChecked={draft.hasNoClaims} onChange={set('hasNoClaims')}>
        {words.noClaims}
      </CheckBox>
      {draft.claims
        .map((row, index) => ({ row, index, key: `claim ${index}` }))
        .map(({ row, index, key }) => {
          const where = (field: string) => `details.claims[${index}].${field}`;
          return (
            <fieldset key={key} className={styles.claim} aria-label={words.claimOf(index + 1)}>
              <Field
                label={words.claim}
                where={where('claim')}
                value={row.claim}
                onChange={(claim) => change(index, { claim })}
              />
              <Field
                label={words.proof}
                where={where('proof')}
                kind="long"
                value={row.proof}
                onChange={(proof) => change(index, { proof })}
              />
              <Select
                label={words.file}
                where={where('attachmentId')}
                value={row.attachmentId ?? ''}
                onChange={(id) => change(index, { attachmentId: id === '' ? null : id })}
                none={words.noFile}
                choices={files}
              />
              <Button
                label={words.takeOutClaim(index + 1)}
                onPress={() => set('claims')(draft.claims.filter((_, at) => at !== index))}
              >
                −
              </Button>
            </fieldset>
          );
        })}
      <div>
        <Button
          onPress={() => set('claims')([...draft.claims, { claim: '', proof: '', attachmentId: null }])}
        >
          {words.addClaim}
        </Button>
      </div>
    </Card>
  );
}
