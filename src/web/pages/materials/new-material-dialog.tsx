import { materialWords, partWords, termWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useDraft } from '../../api/use-draft.ts';
import { useRead } from '../../api/use-read.ts';
import { useSettled } from '../../api/use-settled.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import type { MaterialDetails } from './material.ts';
import { EMPTY_MATERIAL } from './material-draft.ts';

interface Props {
  readonly onClose: () => void;
  /** Told once it is kept. */
  readonly onMade: (id: string) => void;
}

const { short: words, form } = materialWords;
const KINDS = [
  { id: 'ingredient', name: termWords.materialKind.ingredient },
  ...Object.entries(termWords.packagingKind).map(([id, name]) => ({ id, name: words.packaging(name) })),
];
/** More than fit on a phone beside the keyboard are a list to read, not to choose from. */
const MOST_SUGGESTED = 5;
const NOTHING = '';

function useSuggestions(typed: string, isWanted: boolean) {
  const like = useSettled(typed.trim());
  const isAsked = isWanted && like.length > 1;
  const found = useRead('suggestMaterials', { query: { like } }, { isWanted: isAsked, keepsLast: true });
  return isAsked ? (found.data ?? []).slice(0, MOST_SUGGESTED) : [];
}

/** Only what a lot needs; the label name, papers and prices can follow on the material's own page. */
export function NewMaterialDialog({ onClose, onMade }: Props) {
  const { draft, set, isChanged } = useDraft({ name: '', kind: 'ingredient', known: NOTHING });
  const suggestions = useSuggestions(draft.name, draft.kind === 'ingredient');
  const save = useWrite('saveMaterial');
  const submit = async () => {
    const known = suggestions.find(({ key }) => key === draft.known)?.details;
    const made = await save.write({ body: { details: detailsOf(draft, known) } });
    if (!made) return;
    tell(form.saved(draft.name.trim()));
    onMade(made.id);
    onClose();
  };
  return (
    <Dialog title={words.title} isOpen onClose={onClose} isHeld={isChanged}>
      <p className="soft">{words.soft}</p>
      <Form label={words.title} problems={save.problems} onSubmit={() => void submit()}>
        <Field label={form.name} where="details.name" value={draft.name} onChange={set('name')} isFirst />
        <RadioChoice title={form.kind} choices={KINDS} value={draft.kind} onChange={set('kind')} />
        {suggestions.length > 0 && (
          <RadioChoice
            title={words.known}
            choices={[
              { id: NOTHING, name: words.nothingKnown },
              ...suggestions.map(({ key, name, about }) => ({ id: key, name: `${name}: ${about}` })),
            ]}
            value={suggestions.some(({ key }) => key === draft.known) ? draft.known : NOTHING}
            onChange={set('known')}
          />
        )}
        <Button type="submit" isAct isBusy={save.isBusy}>
          {partWords.save}
        </Button>
      </Form>
    </Dialog>
  );
}

function detailsOf(
  { name, kind }: { readonly name: string; readonly kind: string },
  known: Partial<MaterialDetails> = {},
): MaterialDetails {
  if (kind === 'ingredient') return { ...EMPTY_MATERIAL, ...known, name };
  return {
    ...EMPTY_MATERIAL,
    kind: 'packaging',
    packagingKind: kind as MaterialDetails['packagingKind'],
    name,
  };
}
