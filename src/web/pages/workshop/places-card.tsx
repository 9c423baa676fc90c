import { useState } from 'react';
import { termWords, workshopWords } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { List } from '../../parts/list.tsx';
import { ListRow } from '../../parts/list-row.tsx';
import { PlaceDialog } from './place-dialog.tsx';
import styles from './workshop.module.css';
import type { Place } from './workshop.ts';

const { places: words } = workshopWords;

export function PlacesCard({ places }: { readonly places: readonly Place[] }) {
  const [isAdding, setAdding] = useState(false);
  return (
    <Card title={words.title} anchor="places" isFlush>
      <List rows={places} keyOf={({ id }) => id} empty={words.none}>
        {({ name, kind }) => (
          <ListRow>
            <strong>{name}</strong>
            <span className="soft">{termWords.placeKind[kind]}</span>
          </ListRow>
        )}
      </List>
      <div className={styles.last}>
        <Button onPress={() => setAdding(true)}>{words.add}</Button>
      </div>
      {isAdding && <PlaceDialog onClose={() => setAdding(false)} />}
    </Card>
  );
}
