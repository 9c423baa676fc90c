import type { Stamp } from '../../contract/index.ts';
import { deviceName } from './device-name.ts';
import { makeId } from './make-id.ts';

/** Who enters what when, on which machine. One stamp is one entry, however often it is sent. */
export const makeStamp = (by: string): Stamp => ({
  id: makeId(),
  at: new Date().toISOString(),
  by,
  device: deviceName.read(),
});
