import { useEffect } from 'react';
import { personNow } from '../api/person-now.ts';
import { useRead } from '../api/use-read.ts';
import { useStore } from '../api/use-store.ts';
import { useDoor } from '../reach/use-door.ts';

export interface Person {
  readonly id: string;
  readonly name: string;
  /** On a device: they have entered their PIN here. */
  readonly isUnlocked: boolean;
  readonly hasPin: boolean;
}

/**
 * The people who may be chosen and the one who is. A workshop of one need not choose; one who left is forgotten, and on a
 * device one who was locked there.
 */
export function usePersonNow(): { readonly people: readonly Person[]; readonly person: Person | null } {
  const workshop = useRead('getWorkshop').data;
  const door = useDoor().data;
  const chosen = useStore(personNow);
  const people = (workshop?.people ?? [])
    .filter(({ isActive }) => isActive)
    .map(({ id, name }) => {
      // Nobody is asked at the workshop's own computer, nor where the computer cannot be asked.
      const here = door?.people.find((each) => each.id === id);
      return { id, name, isUnlocked: here?.isUnlocked ?? true, hasPin: here?.hasPin ?? true };
    });
  const person = people.find(({ id, isUnlocked }) => id === chosen && isUnlocked) ?? null;
  const only = people.length === 1 ? people[0] : undefined;
  const isKnown = workshop !== undefined;
  useEffect(() => {
    if (!isKnown || person !== null) return;
    if (only?.isUnlocked) personNow.write(only.id);
    else if (chosen !== null) personNow.write(null);
  }, [isKnown, person, only?.id, only?.isUnlocked, chosen]);
  return { people, person };
}
