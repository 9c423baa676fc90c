export { type Machine, realMachine } from './machine.ts';
