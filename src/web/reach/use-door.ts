import { useRead } from '../api/use-read.ts';

/** Whether this page came from the workshop's own computer, where nobody is asked who they are. */
export const isOwnComputer = ['127.0.0.1', 'localhost', '[::1]'].includes(location.hostname);

/** Through which door this page came, and who may be chosen here; asked for at a device only. */
export const useDoor = () => useRead('getDoor', {}, { isWanted: !isOwnComputer });
