import type { RouteName } from '../../contract/index.ts';
import { useWrite, type Write } from './use-write.ts';

/** A write from the bench: as any other, but kept on this tablet first. */
export const useBenchWrite = <Name extends RouteName>(name: Name): Write<Name> => useWrite(name);
