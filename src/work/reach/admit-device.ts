import { done, problem, type Result, refused } from '../../core/problem.ts';
import {
  canonicalJson,
  giveUp,
  insertDevice,
  listDevices,
  type Reader,
  writeOnce,
} from '../../storage/index.ts';
import type { Context } from '../context.ts';

export interface Admission {
  readonly code: string;
  readonly name: string;
  /** SHA-256 of what its cookie will hold. */
  readonly tokenHash: string;
}

/** Lets a device in by the code. The person who asked for the code is the one who lets it in. */
export async function admitDevice(
  context: Context,
  { code, name, tokenHash }: Admission,
): Promise<Result<{ readonly id: string; readonly name: string }>> {
  const { network, machine, storage } = context;
  if (!network) return refused(problem('network-not-here', 'network'));
  const now = machine.now();
  // Only whoever has the code learns which names there are; and a name that is taken costs nobody the code.
  const known = network.pairing.judge(code, now);
  if (!known.ok) return known;
  if (await isNameTaken(storage.db, name)) return refused(nameTaken(name));
  const open = network.pairing.use(code, now);
  if (!open.ok) return open;
  const id = machine.newId();
  const asked = { text: canonicalJson(['pairDevice', { id, name }]), salt: null };
  const stamp = { id: machine.newId(), at: now, by: open.value.by, device: name, asked };
  const written = await writeOnce(storage, stamp, now, async (tx, tell) => {
    await tell({ kind: 'device-paired', subjectKind: 'device', subjectId: id, payload: { name } });
    await insertDevice(tx, { id, name, token_hash: tokenHash, paired_at: now, is_dropped: 0, version: 1 });
  });
  if (!written.ok) return written;
  await network.door.closeHint();
  return done({ id, name });
}

/** Entries say on which device they were made, so each name stands for one. */
export const isNameTaken = async (db: Reader, name: string, but = ''): Promise<boolean> =>
  (await listDevices(db)).some((row) => row.id !== but && row.name.toLowerCase() === name.toLowerCase());

export const nameTaken = (name: string) => problem('device-name-taken', 'name', { found: name });

export async function refuseTakenName(db: Reader, name: string, but: string): Promise<void> {
  if (await isNameTaken(db, name, but)) giveUp(nameTaken(name));
}
