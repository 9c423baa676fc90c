import { useState } from 'react';
import { materialWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { useSettled } from '../../api/use-settled.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { Field } from '../../parts/field.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { List } from '../../parts/list.tsx';
import { ListFoot } from '../../parts/list-foot.tsx';
import { Page } from '../../shell/page.tsx';
import { chooseName } from './choose-name.ts';
import type { MaterialDetails } from './material.ts';
import { EMPTY_MATERIAL } from './material-draft.ts';
import { MaterialEditor } from './material-editor.tsx';

const { start: words } = materialWords;

interface Chosen {
  readonly first: MaterialDetails;
  /** By field: where what is filled in comes from. */
  readonly sources: Readonly<Record<string, string>>;
}

/** First what the tables know, then the form with it filled in. */
export function NewMaterialPage() {
  const [chosen, setChosen] = useState<Chosen | null>(null);
  if (chosen === null)
    return <ChooseStart onChosen={(details, sources) => setChosen({ first: details, sources })} />;
  const { first, sources } = chosen;
  return (
    <Page
      title={materialWords.startTitle}
      above={materialWords.startTitle}
      says={first.name || materialWords.startTitle}
      soft={words.soft}
      isNarrow
    >
      <MaterialEditor first={first} sources={sources} />
    </Page>
  );
}

interface StartProps {
  readonly onChosen: (details: MaterialDetails, sources: Chosen['sources']) => void;
}

function ChooseStart({ onChosen }: StartProps) {
  const [typed, setTyped] = useState('');
  const like = useSettled(typed.trim());
  const found = useRead(
    'suggestMaterials',
    { query: { like } },
    { isWanted: like.length > 1, keepsLast: true },
  );
  const suggestions = like.length > 1 ? (found.data ?? []) : [];
  const start = (details: Partial<MaterialDetails>, sources: Chosen['sources'] = {}) =>
    onChosen({ ...EMPTY_MATERIAL, ...details, name: chooseName(typed, details.name ?? '') }, sources);
  return (
    <Page
      title={materialWords.startTitle}
      above={materialWords.startTitle}
      says={words.says}
      soft={words.soft}
      isNarrow
    >
      <Field label={words.name} where="name" value={typed} onChange={setTyped} isBench />
      <FormActions>
        <Button onPress={() => start({})}>{words.own}</Button>
        <Button onPress={() => start({ kind: 'packaging', packagingKind: 'tin' })}>
          {words.ownPackaging}
        </Button>
      </FormActions>
      {like.length > 1 && (
        <Card title={words.list} isFlush>
          <List rows={suggestions} keyOf={({ key }) => key} empty={words.none}>
            {({ name, about, details, sources }) => (
              <ListFoot>
                <span>
                  <strong>{name}</strong>
                  <br />
                  <span className="soft small">{about}</span>
                </span>
                <Button onPress={() => start(details, sources)} label={`${words.take}: ${name}`}>
                  {words.take}
                </Button>
              </ListFoot>
            )}
          </List>
        </Card>
      )}
    </Page>
  );
}
