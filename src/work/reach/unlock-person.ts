import { insertUnlocked } from '../../storage/index.ts';
import { record, viewId } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { checkPin } from './check-pin.ts';
import { ownDevice } from './own-device.ts';

/** From now on the person signs on this device, through a restart too: until they lock it, or their PIN changes. */
export const unlockPerson: UseCase<'unlockPerson'> = async (context, { body: { stamp, pin } }) => {
  const device = ownDevice(context);
  if (!device.ok) return device;
  const deviceId = device.value.id;
  const known = await checkPin(context, { deviceId, personId: stamp.by, pin, where: 'pin' });
  if (!known.ok) return known;
  return record(
    context,
    stamp,
    async (tx, tell) => {
      await tell({
        kind: 'person-unlocked',
        subjectKind: 'person',
        subjectId: stamp.by,
        payload: { deviceId },
      });
      await insertUnlocked(tx, { device_id: deviceId, person_id: stamp.by, at: context.machine.now() });
      return stamp.by;
    },
    viewId,
  );
};
