import { noteDropped } from '../../machine/index.ts';
import {
  type DeviceRow,
  deleteUnlocked,
  findDevice,
  giveUp,
  updateDevice,
  type Writer,
} from '../../storage/index.ts';
import { changedMeanwhile, record, thingNotFound, viewId } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { refuseTakenName } from './admit-device.ts';

async function findPaired(tx: Writer, id: string): Promise<DeviceRow> {
  const device = await findDevice(tx, id);
  if (!device || device.is_dropped === 1) giveUp(thingNotFound('id', id));
  return device;
}

export const renameDevice: UseCase<'renameDevice'> = (context, { params, body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const device = await findPaired(tx, params.id ?? '');
      await refuseTakenName(tx, body.name, device.id);
      await tell({
        kind: 'device-renamed',
        subjectKind: 'device',
        subjectId: device.id,
        payload: { name: body.name },
      });
      if (!(await updateDevice(tx, { ...device, name: body.name }, body.version)))
        giveUp(changedMeanwhile('device', body.version, device.version, device.name));
      return device.id;
    },
    viewId,
  );

/** Its cookie opens nothing from now on, and what it still has open is ended. */
export const dropDevice: UseCase<'dropDevice'> = async (context, { params, body }) => {
  const { network, storage } = context;
  const dropped = await record(
    context,
    body.stamp,
    async (tx, tell) => {
      const device = await findPaired(tx, params.id ?? '');
      await tell({ kind: 'device-dropped', subjectKind: 'device', subjectId: device.id, payload: {} });
      if (!(await updateDevice(tx, { ...device, is_dropped: 1 }, body.version)))
        giveUp(changedMeanwhile('device', body.version, device.version, device.name));
      await deleteUnlocked(tx, { deviceId: device.id });
      noteDropped(storage.file, device.token_hash);
      return device.id;
    },
    viewId,
  );
  if (dropped.ok) network?.door.hangUp(dropped.value.id);
  return dropped;
};
