import { useState } from 'react';
import { partWords, reachWords, workshopWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { List } from '../../parts/list.tsx';
import { ListFoot } from '../../parts/list-foot.tsx';
import { State } from '../../parts/state.tsx';
import { isOwnComputer } from '../../reach/use-door.ts';
import { usePersonNow } from '../../shell/use-person-now.ts';
import { PersonDialog } from './person-dialog.tsx';
import { PinDialog } from './pin-dialog.tsx';
import styles from './workshop.module.css';
import type { WorkshopPerson } from './workshop.ts';

const { people: words } = workshopWords;

export function PeopleCard({ people }: { readonly people: readonly WorkshopPerson[] }) {
  const [asked, setAsked] = useState<string | null>(null);
  const [pinOf, setPinOf] = useState<WorkshopPerson | null>(null);
  const door = useRead('getDoor').data;
  const { person: now } = usePersonNow();
  const hasPin = (id: string): boolean => door?.people.find((each) => each.id === id)?.hasPin ?? false;
  // At the workshop's computer anybody's, on a device one's own.
  const maySetPin = ({ id, isActive }: WorkshopPerson): boolean =>
    door !== undefined && isActive && (isOwnComputer || id === now?.id);
  return (
    <Card title={words.title} anchor="people" isFlush>
      <List rows={people} keyOf={({ id }) => id} empty={words.none}>
        {(person) => {
          const { id, name, isActive } = person;
          return (
            <ListFoot>
              <span className={styles.person}>
                <strong>{name}</strong>
                <State kind={isActive ? 'ready' : 'plain'}>{isActive ? words.active : words.gone}</State>
                {isActive && door && (
                  <span className="soft small">{hasPin(id) ? reachWords.pin.has : reachWords.pin.none}</span>
                )}
              </span>
              <span>
                {maySetPin(person) && (
                  <Button isPlain onPress={() => setPinOf(person)} label={`${pinWord(hasPin(id))}: ${name}`}>
                    {pinWord(hasPin(id))}
                  </Button>
                )}
                <Button isPlain onPress={() => setAsked(id)} label={`${partWords.change}: ${name}`}>
                  {partWords.change}
                </Button>
              </span>
            </ListFoot>
          );
        }}
      </List>
      <div className={styles.last}>
        <Button onPress={() => setAsked('')}>{words.add}</Button>
      </div>
      {asked !== null && (
        <PersonDialog person={people.find(({ id }) => id === asked)} onClose={() => setAsked(null)} />
      )}
      {pinOf !== null && (
        <PinDialog person={pinOf} hasPin={hasPin(pinOf.id)} onClose={() => setPinOf(null)} />
      )}
    </Card>
  );
}

function pinWord(hasPin: boolean): string {
  if (!isOwnComputer) return reachWords.pin.changeOwn;
  return hasPin ? reachWords.pin.change : reachWords.pin.set;
}
