import { useEffect } from 'react';
import { personNow } from '../api/person-now.ts';
import { useRead } from '../api/use-read.ts';
import { useStore } from '../api/use-store.ts';

export interface Person {
  readonly id: string;
  readonly name: string;
}

/** The people who may be chosen and the one who is. A workshop of one need not choose; one who left is forgotten. */
export function usePersonNow(): { readonly people: readonly Person[]; readonly person: Person | null } {
  const workshop = useRead('getWorkshop').data;
  const chosen = useStore(personNow);
  const people = (workshop?.people ?? []).filter(({ isActive }) => isActive);
  const person = people.find(({ id }) => id === chosen) ?? null;
  const only = people.length === 1 ? people[0] : undefined;
  const isKnown = workshop !== undefined;
  useEffect(() => {
    if (!isKnown || person !== null) return;
    if (only) personNow.write(only.id);
    else if (chosen !== null) personNow.write(null);
  }, [isKnown, person, only, chosen]);
  return { people, person };
}
