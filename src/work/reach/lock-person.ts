import { deleteUnlocked } from '../../storage/index.ts';
import { record, viewId } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { ownDevice } from './own-device.ts';

/** Needs no PIN: whoever finds a tablet lying about may lock it for its person. */
export const lockPerson: UseCase<'lockPerson'> = async (context, { body: { stamp } }) => {
  const device = ownDevice(context);
  if (!device.ok) return device;
  const deviceId = device.value.id;
  return record(
    context,
    stamp,
    async (tx, tell) => {
      await tell({
        kind: 'person-locked',
        subjectKind: 'person',
        subjectId: stamp.by,
        payload: { deviceId },
      });
      await deleteUnlocked(tx, { deviceId, personId: stamp.by });
      return stamp.by;
    },
    viewId,
  );
};
