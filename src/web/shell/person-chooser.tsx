import { User } from 'lucide-react';
import { useState } from 'react';
import { shellWords } from '../../words/index.ts';
import { personAsked, personNow } from '../api/person-now.ts';
import { useStore } from '../api/use-store.ts';
import { Button } from '../parts/button.tsx';
import { Dialog } from '../parts/dialog.tsx';
import styles from './shell.module.css';
import { usePersonNow } from './use-person-now.ts';

const { person: words } = shellWords;

/** Who works at this machine now. Opens by itself when an entry waits for a name. */
export function PersonChooser() {
  const { people, person } = usePersonNow();
  const isAsked = useStore(personAsked) !== null;
  const [isOpen, setOpen] = useState(false);
  const choose = (id: string | null) => {
    setOpen(false);
    personNow.write(id);
  };
  return (
    <>
      <button type="button" className={styles.person} onClick={() => setOpen(true)}>
        <User size={18} aria-hidden />
        {person ? (
          <>
            <span className="visually-hidden">{words.working('')}</span>
            {person.name}
          </>
        ) : (
          words.nobody
        )}
      </button>
      <Dialog
        title={words.ask}
        isOpen={isOpen || isAsked}
        onClose={() => choose(person?.id ?? null)}
        closeWord={words.notNow}
      >
        <p className="soft">{people.length === 0 ? words.none : words.why}</p>
        <ul className={styles.people}>
          {people.map(({ id, name }) => (
            <li key={id}>
              <Button isWide isBench isAct={id === person?.id} onPress={() => choose(id)}>
                {name}
              </Button>
            </li>
          ))}
        </ul>
      </Dialog>
    </>
  );
}
