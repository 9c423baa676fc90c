import type { OwnAddresses } from '../machine/index.ts';
import { type Network, PairingDesk } from '../work/index.ts';
import { type AppWish, createApp } from './create-app.ts';
import { HttpsDoor } from './network-door.ts';

export interface NetworkWish extends Omit<AppWish, 'gate' | 'port'> {
  readonly folder: string;
  readonly addresses?: () => OwnAddresses;
  readonly firstPort?: number;
  readonly today?: () => string;
}

/** The network of a workshop: its door, what pairs devices, and the same application behind it with a gate in front. */
export function makeNetwork({ folder, addresses, firstPort, today, ...app }: NetworkWish): Network & {
  readonly door: HttpsDoor;
} {
  const pairing = new PairingDesk();
  const network = {
    pairing,
    get door(): HttpsDoor {
      return door;
    },
  };
  const context = { ...app.context, network };
  const door = new HttpsDoor({
    folder,
    pairing,
    now: () => app.context.machine.now(),
    log: app.log,
    appFor: (gate) => createApp({ ...app, context, port: () => 0, gate }).fetch,
    ...(addresses && { addresses }),
    ...(firstPort !== undefined && { firstPort }),
    ...(today && { today }),
  });
  return network;
}
