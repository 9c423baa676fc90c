export { readAddressHint, removeAddressHint, writeAddressHint } from './address-hint.ts';
export { type Machine, realMachine } from './machine.ts';
export { makeFolder } from './make-folder.ts';
export { findProgramFolder, readOwnVersion } from './own-version.ts';
