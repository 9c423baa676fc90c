import { User } from 'lucide-react';
import { useEffect, useState } from 'react';
import { reachWords, shellWords } from '../../words/index.ts';
import { connection } from '../api/connection.ts';
import { personAsked, personNow } from '../api/person-now.ts';
import { useStore } from '../api/use-store.ts';
import { door } from '../away/door.ts';
import { Button } from '../parts/button.tsx';
import { Dialog } from '../parts/dialog.tsx';
import { PinForm } from '../reach/pin-form.tsx';
import { isOwnComputer } from '../reach/use-door.ts';
import { useUnlock } from '../reach/use-unlock.ts';
import styles from './shell.module.css';
import { type Person, usePersonNow } from './use-person-now.ts';

const { person: words } = shellWords;

/**
 * Who works at this machine now. Opens by itself when an entry waits for a name; on a tablet or phone whoever is chosen
 * types their PIN, also where somebody locked them meanwhile.
 */
export function PersonChooser() {
  const { people, person } = usePersonNow();
  const isAsked = useStore(personAsked) !== null;
  const isLocked = useStore(door) === 'person-locked';
  const [isOpen, setOpen] = useState(false);
  const [asked, setAsked] = useState<Person | null>(null);
  useEffect(() => {
    if (isLocked) setOpen(true);
  }, [isLocked]);
  const choose = (id: string | null) => {
    setOpen(false);
    setAsked(null);
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
        title={asked ? reachWords.unlock.title(asked.name) : words.ask}
        isOpen={isOpen || isAsked}
        onClose={() => choose(person?.id ?? null)}
        closeWord={words.notNow}
      >
        {asked ? (
          <PinForm
            key={asked.id}
            person={asked}
            onUnlocked={() => choose(asked.id)}
            onBack={() => setAsked(null)}
          />
        ) : (
          <PeopleToChoose people={people} person={person} onChoose={choose} onAsk={setAsked} />
        )}
      </Dialog>
    </>
  );
}

interface ToChoose {
  readonly people: readonly Person[];
  readonly person: Person | null;
  readonly onChoose: (id: string | null) => void;
  readonly onAsk: (person: Person) => void;
}

/** At the workshop's own computer a name is enough. */
function PeopleToChoose({ people, person, onChoose, onAsk }: ToChoose) {
  const isSilent = useStore(connection) === 'silent';
  const isPinAsked = !isOwnComputer && !isSilent;
  const mayChoose = ({ hasPin, isUnlocked }: Person): boolean => (isPinAsked ? hasPin : isUnlocked);
  const { lock } = useUnlock();
  const lockFor = async (id: string) => {
    if (await lock(id)) onChoose(null);
  };
  return (
    <>
      <p className="soft">{people.length === 0 ? words.none : words.why}</p>
      {!isOwnComputer && isSilent && <p>{reachWords.unlock.silent}</p>}
      <ul className={styles.people}>
        {people.map((each) => (
          <li key={each.id}>
            <Button
              isWide
              isBench
              isAct={each.id === person?.id}
              isDisabled={!mayChoose(each)}
              onPress={() => (isPinAsked && each.id !== person?.id ? onAsk(each) : onChoose(each.id))}
            >
              {each.hasPin ? each.name : `${each.name}: ${reachWords.unlock.noPin}`}
            </Button>
          </li>
        ))}
      </ul>
      {isPinAsked && people.some(({ hasPin }) => !hasPin) && (
        <p className="soft">{reachWords.unlock.noPinMend}</p>
      )}
      {isPinAsked && person && (
        <Button isBench onPress={() => void lockFor(person.id)}>
          {reachWords.unlock.lock(person.name)}
        </Button>
      )}
    </>
  );
}
