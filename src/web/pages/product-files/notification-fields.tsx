import { productFileWords } from '../../../words/index.ts';
import type { Editing } from '../../api/use-editing.ts';
import { Card } from '../../parts/card.tsx';
import { Field } from '../../parts/field.tsx';
import { Select } from '../../parts/select.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import type { FileDraft } from './file-draft.ts';

const { form: words } = productFileWords;
type Details = FileDraft['notification'];
type TextKey = 'category' | 'contact' | 'placedIn' | 'gbReference' | 'euReference';

const ANSWERS = Object.entries(words.answers).map(([id, name]) => ({ id, name }));
const KINDS = Object.entries(words.formulaKinds).map(([id, name]) => ({ id, name }));

interface Props {
  readonly editing: Editing<FileDraft, never>;
}

/** What the portals ask for and no data tells. */
export function NotificationFields({ editing: { draft, set } }: Props) {
  const details = draft.notification;
  const put = (part: Partial<Details>) => set('notification')({ ...details, ...part });
  const text = (key: TextKey, label: string, hint?: string) => (
    <Field
      label={label}
      where={`details.notification.${key}`}
      value={details[key]}
      onChange={(value) => put({ [key]: value })}
      hint={hint}
    />
  );
  const answer = (key: 'nanomaterials' | 'cmr', label: string) => (
    <Select
      label={label}
      where={`details.notification.${key}`}
      value={details[key]}
      onChange={(value) => put({ [key]: value as Details['cmr'] })}
      none={words.unanswered}
      choices={ANSWERS}
    />
  );
  return (
    <Card title={words.notification} anchor="notification">
      {text('category', words.category, words.categoryHint)}
      {text('contact', words.contact)}
      {text('placedIn', words.placedIn)}
      <SideBySide>
        {answer('nanomaterials', words.nano)}
        {answer('cmr', words.cmr)}
      </SideBySide>
      <Select
        label={words.formulaAs}
        where="details.notification.formulaAs"
        value={details.formulaAs}
        onChange={(value) => put({ formulaAs: value as Details['formulaAs'] })}
        choices={KINDS}
      />
      {details.formulaAs === 'frame' && (
        <Field
          label={words.frame}
          where="details.notification.frame"
          value={details.frame}
          onChange={(frame) => put({ frame })}
        />
      )}
      <SideBySide>
        {text('gbReference', words.gbReference)}
        {text('euReference', words.euReference)}
      </SideBySide>
    </Card>
  );
}
