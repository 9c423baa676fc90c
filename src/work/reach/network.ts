import type { Problem, Result } from '../../core/problem.ts';
import type { PairingDesk } from './pairing-desk.ts';

/** By what a device reaches this computer: `192.168.1.20`, `bench.local`. */
export interface WayIn {
  readonly address: string;
  readonly url: string;
  readonly kind: 'number' | 'name';
}

export interface NetworkState {
  readonly isOn: boolean;
  /** Why it is not on although it was asked for. */
  readonly trouble: Problem | null;
  readonly port: number | null;
  readonly ways: readonly WayIn[];
  /** The authority's certificate, once it was made. */
  readonly authority: string | null;
  readonly fingerprint: string | null;
  readonly authorityUntil: string | null;
  /** Where a device without any trust fetches the certificate, while a pairing is open. */
  readonly hint: string | null;
}

/** The door to the workshop's network, as the use-cases see it: the server holds it. */
export interface NetworkDoor {
  /** How things stand now: addresses are looked at anew. */
  view(): Promise<NetworkState>;
  turnOn(port?: number): Promise<Result<unknown>>;
  turnOff(): Promise<void>;
  openHint(): Promise<void>;
  closeHint(): Promise<void>;
  /** Ends whatever a device still has open. */
  hangUp(deviceId: string): void;
}

export interface Network {
  readonly door: NetworkDoor;
  readonly pairing: PairingDesk;
}

/** Who asks from the network; a request that was made at this computer has no asker, and nothing is asked of it. */
export interface Asker {
  /** null: not paired. */
  readonly device: { readonly id: string; readonly name: string } | null;
}
