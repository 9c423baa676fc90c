import type { Machine } from '../machine/index.ts';
import type { Asked, Storage } from '../storage/index.ts';
import type { Asker, Network } from './reach/network.ts';

/** What every use-case is given: the open file, and the world's time and ids. */
export interface Context {
  readonly storage: Storage;
  readonly machine: Machine;
  /** Fills an empty file with the example workshop; absent where the program came without it. */
  readonly buildExample?: (context: Context) => Promise<void>;
  /** The door to the workshop's network; absent where the program answers nobody. */
  readonly network?: Network;
  /** Who asks from that network; absent where it was asked at this computer. */
  readonly asker?: Asker;
}

/** What a use-case is asked: the context, and the request word for word, which its entry keeps as a hash. */
export interface AskedContext extends Context {
  readonly asked: () => Asked;
  /**
   * Somebody answered for it: what came late is entered after all, also where the work has gone on since.
   */
  readonly isAfterAll?: boolean;
}
