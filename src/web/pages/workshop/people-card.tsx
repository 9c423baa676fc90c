import { useState } from 'react';
import { partWords, workshopWords } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { List } from '../../parts/list.tsx';
import { ListFoot } from '../../parts/list-foot.tsx';
import { State } from '../../parts/state.tsx';
import { PersonDialog } from './person-dialog.tsx';
import styles from './workshop.module.css';
import type { WorkshopPerson } from './workshop.ts';

const { people: words } = workshopWords;

export function PeopleCard({ people }: { readonly people: readonly WorkshopPerson[] }) {
  const [asked, setAsked] = useState<string | null>(null);
  return (
    <Card title={words.title} anchor="people" isFlush>
      <List rows={people} keyOf={({ id }) => id} empty={words.none}>
        {({ id, name, isActive }) => (
          <ListFoot>
            <span className={styles.person}>
              <strong>{name}</strong>
              <State kind={isActive ? 'ready' : 'plain'}>{isActive ? words.active : words.gone}</State>
            </span>
            <Button isPlain onPress={() => setAsked(id)} label={`${partWords.change}: ${name}`}>
              {partWords.change}
            </Button>
          </ListFoot>
        )}
      </List>
      <div className={styles.last}>
        <Button onPress={() => setAsked('')}>{words.add}</Button>
      </div>
      {asked !== null && (
        <PersonDialog person={people.find(({ id }) => id === asked)} onClose={() => setAsked(null)} />
      )}
    </Card>
  );
}
