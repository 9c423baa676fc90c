import { done } from '../../core/problem.ts';
import { findPinKey, nameOfKey } from '../../machine/index.ts';
import { listPeople, listPinHolders, listUnlocked } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import type { UseCase } from '../use-case.ts';

export const getDoor: UseCase<'getDoor'> = async (context) => {
  const { asker, network, machine } = context;
  return done({
    door: asker ? ('network' as const) : ('own-computer' as const),
    device: asker?.device ?? null,
    isPairingOpen: (network?.pairing.current(machine.now()) ?? null) !== null,
    people: asker && !asker.device ? [] : await viewPeople(context),
  });
};

/** At the workshop's own computer nobody is asked for a PIN. */
async function viewPeople({ storage, asker }: Context) {
  const key = findPinKey(storage.file);
  const holders = new Set(key === null ? [] : await listPinHolders(storage.db, nameOfKey(key)));
  const unlocked = asker?.device ? await listUnlocked(storage.db, asker.device.id) : [];
  return (await listPeople(storage.db))
    .filter(({ is_active }) => is_active === 1)
    .map(({ id, name }) => ({
      id,
      name,
      hasPin: holders.has(id),
      isUnlocked: !asker?.device || unlocked.some(({ person_id }) => person_id === id),
    }));
}
