import type { UseCases } from '../use-case.ts';
import { dropDevice, renameDevice } from './change-device.ts';
import { getAuthority } from './get-authority.ts';
import { getDoor } from './get-door.ts';
import { lockPerson } from './lock-person.ts';
import { changeOwnPin, setPin } from './set-pin.ts';
import { closePairing, openPairing, switchReach } from './switch-reach.ts';
import { unlockPerson } from './unlock-person.ts';
import { getReach } from './view-reach.ts';

export { type Admission, admitDevice } from './admit-device.ts';
export type { Asker, Network, NetworkDoor, NetworkState, WayIn } from './network.ts';
export { PairingDesk } from './pairing-desk.ts';
export { mayBeSigned, recogniseDevice } from './recognise-device.ts';

export const reachUseCases = {
  getDoor,
  getAuthority,
  getReach,
  switchReach,
  openPairing,
  closePairing,
  renameDevice,
  dropDevice,
  setPin,
  changeOwnPin,
  unlockPerson,
  lockPerson,
} satisfies UseCases<
  | 'getDoor'
  | 'getAuthority'
  | 'getReach'
  | 'switchReach'
  | 'openPairing'
  | 'closePairing'
  | 'renameDevice'
  | 'dropDevice'
  | 'setPin'
  | 'changeOwnPin'
  | 'unlockPerson'
  | 'lockPerson'
>;
