import { refused } from '../../core/problem.ts';
import { hashPin, nameOfKey, readPinKey } from '../../machine/index.ts';
import {
  deletePin,
  deleteUnlocked,
  findPerson,
  forgetPinTries,
  giveUp,
  insertUnlocked,
  isWritten,
  keepPin,
  type Writer,
} from '../../storage/index.ts';
import type { AskedContext, Context } from '../context.ts';
import { record, thingNotFound, viewId } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { checkPin } from './check-pin.ts';
import { judgePin } from './judge-pin.ts';
import { ownDevice } from './own-device.ts';

/** What is kept of a PIN; the hashing takes its time, so it is done before the transaction. */
const secretOf = async ({ storage }: Context, pin: string) => {
  const key = readPinKey(storage.file);
  return { ...(await hashPin(pin, key)), key_name: nameOfKey(key) };
};

/** At the workshop's own computer, where nobody is asked for a PIN: set, changed, or taken away. */
export const setPin: UseCase<'setPin'> = async (context, { params, body: { stamp, pin } }) => {
  const personId = params.id ?? '';
  const plain = pin === null ? undefined : judgePin(pin, 'pin');
  if (plain) return refused(plain);
  const secret = pin === null ? null : await secretOf(context, pin);
  return record(
    context,
    stamp,
    async (tx, tell) => {
      if (!(await findPerson(tx, personId))) giveUp(thingNotFound('id', personId));
      await tell({
        kind: pin === null ? 'pin-taken-away' : 'pin-set',
        subjectKind: 'person',
        subjectId: personId,
        payload: {},
      });
      await replacePin(tx, personId, secret);
      return personId;
    },
    viewId,
  );
};

/** Every device asks anew, and what was tried before counts no longer. */
async function replacePin(
  tx: Writer,
  personId: string,
  secret: Awaited<ReturnType<typeof secretOf>> | null,
): Promise<void> {
  if (secret === null) await deletePin(tx, personId);
  else await keepPin(tx, { person_id: personId, ...secret });
  await deleteUnlocked(tx, { personId });
  await forgetPinTries(tx, { personId });
}

/** On a device, by the old PIN: the person stays unlocked there, and nowhere else. */
export const changeOwnPin: UseCase<'changeOwnPin'> = async (context, { body }) => {
  const { stamp, oldPin, pin } = body;
  const device = ownDevice(context);
  if (!device.ok) return device;
  const plain = judgePin(pin, 'pin');
  if (plain) return refused(plain);
  const deviceId = device.value.id;
  const known = await checkPin(context, {
    deviceId,
    personId: stamp.by,
    pin: oldPin,
    where: 'oldPin',
    isCarriedOut: () => isWritten(context.storage, { ...stamp, asked: context.asked() }),
  });
  return known.ok ? changeTo(context, stamp, pin, deviceId) : known;
};

async function changeTo(
  context: AskedContext,
  stamp: Parameters<typeof record>[1],
  pin: string,
  deviceId: string,
): ReturnType<typeof changeOwnPin> {
  const secret = await secretOf(context, pin);
  return record(
    context,
    stamp,
    async (tx, tell) => {
      await tell({ kind: 'pin-changed', subjectKind: 'person', subjectId: stamp.by, payload: { deviceId } });
      await replacePin(tx, stamp.by, secret);
      await insertUnlocked(tx, { device_id: deviceId, person_id: stamp.by, at: context.machine.now() });
      return stamp.by;
    },
    viewId,
  );
}
