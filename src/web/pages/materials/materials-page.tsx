import { useState } from 'react';
import { materialWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { Field } from '../../parts/field.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { List } from '../../parts/list.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { Page } from '../../shell/page.tsx';
import { ShelfNav } from '../shelf/shelf-nav.tsx';
import type { Material } from './material.ts';
import { MaterialLine } from './material-line.tsx';

export const MaterialsPage = () => (
  <Loaded read={useRead('listMaterials')} title={materialWords.title}>
    {(materials) => <MaterialsView materials={materials} />}
  </Loaded>
);

function MaterialsView({ materials }: { readonly materials: readonly Material[] }) {
  const [typed, setTyped] = useState('');
  const ofKind = (kind: 'ingredient' | 'packaging') =>
    materials.filter(({ details }) => details.kind === kind);
  const isLike = ({ details }: Material) =>
    [details.name, details.inciEu, details.supplier].some((text) =>
      text.toLowerCase().includes(typed.trim().toLowerCase()),
    );
  const empty = typed.trim() === '' ? materialWords.none : materialWords.noMatch;
  const boards = [
    [materialWords.ingredients, ofKind('ingredient')],
    [materialWords.packaging, ofKind('packaging')],
  ] as const;
  return (
    <Page
      title={materialWords.title}
      says={materialWords.says(ofKind('ingredient').length, ofKind('packaging').length)}
      soft={materialWords.soft}
      actions={
        <LinkButton to="/materials/new" isAct>
          {materialWords.add}
        </LinkButton>
      }
      isNarrow
    >
      <ShelfNav />
      {materials.length > 8 && (
        <Field label={materialWords.find} where="like" value={typed} onChange={setTyped} />
      )}
      {boards.map(([title, rows]) => (
        <Card key={title} title={title} aside={rows.length || undefined} isFlush>
          <List rows={rows.filter(isLike)} keyOf={({ id }) => id} empty={empty}>
            {(material) => <MaterialLine material={material} />}
          </List>
        </Card>
      ))}
    </Page>
  );
}
