import { hashDeviceToken, readDropped } from '../../machine/index.ts';
import { findDeviceByToken, isUnlockedOn, noteSeen } from '../../storage/index.ts';
import type { Context } from '../context.ts';

/** "Seen" is said to the minute: a write for each request would be one too many. */
const MINUTE_MS = 60_000;
const seen = new WeakMap<object, Map<string, number>>();

/** The paired device that shows this secret, or null. */
export async function recogniseDevice(
  { storage, machine }: Context,
  token: string | undefined,
): Promise<{ readonly id: string; readonly name: string } | null> {
  if (token === undefined || token === '') return null;
  const hash = hashDeviceToken(token);
  const device = await findDeviceByToken(storage.db, hash);
  if (!device) return null;
  const now = machine.now();
  const times = seen.get(storage.handle) ?? new Map<string, number>();
  seen.set(storage.handle, times);
  if (Math.abs(Date.parse(now) - (times.get(device.id) ?? 0)) >= MINUTE_MS) {
    times.set(device.id, Date.parse(now));
    await noteSeen(storage.db, device.id, now);
  }
  // Last of all: it may have been dropped while this was being looked up.
  return readDropped(storage.file).includes(hash) ? null : { id: device.id, name: device.name };
}

/** Whether what is sent from this device may be signed by this person. */
export const mayBeSigned = ({ storage }: Context, deviceId: string, personId: string): Promise<boolean> =>
  isUnlockedOn(storage.db, deviceId, personId);
