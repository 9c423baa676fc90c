export { readAddressHint, removeAddressHint, writeAddressHint } from './address-hint.ts';
export { endOf, fingerprintOf, type ServerNames, shortMark } from './certificates.ts';
export { type KeptCertificates, keepCertificates, namesIn, readAuthority } from './keep-certificates.ts';
export { type Machine, realMachine } from './machine.ts';
export { makeFolder } from './make-folder.ts';
export {
  findPinKey,
  keepNetworkChoice,
  type NetworkChoice,
  networkFolder,
  noteDropped,
  readDropped,
  readNetworkChoice,
  readPinKey,
} from './network-folder.ts';
export { isNearAddress, type OwnAddresses, readOwnAddresses } from './own-addresses.ts';
export { findProgramFolder, readOwnVersion } from './own-version.ts';
export {
  hashDeviceToken,
  hashPin,
  isPin,
  isSameSecret,
  keyedHash,
  nameOfKey,
  newDeviceToken,
  randomDigits,
} from './secrets.ts';
