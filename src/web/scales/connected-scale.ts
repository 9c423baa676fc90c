import { makeStore } from '../api/make-store.ts';
import type { ScaleReading } from './reading.ts';
import {
  NOTHING_READ,
  offeredGrams,
  type SettlesBy,
  type Settling,
  settleReading,
} from './settle-reading.ts';

export interface ConnectedScale {
  readonly kind: 'hid' | 'serial';
  readonly name: string;
  readonly settling: Settling;
}

/** The scale that is plugged into this tablet, if one is; null: none. */
export const connectedScale = makeStore<ConnectedScale | null>(null);

/** What went wrong with connecting, to be said; null: nothing. */
export const connectTrouble = makeStore<'refused' | 'lost' | 'busy' | null>(null);

export function beginConnection(kind: ConnectedScale['kind'], name: string): void {
  connectTrouble.write(null);
  connectedScale.write({ kind, name, settling: NOTHING_READ });
}

export function takeReading(read: ScaleReading, atMs: number, by: SettlesBy): void {
  const now = connectedScale.read();
  if (now) connectedScale.write({ ...now, settling: settleReading(now.settling, read, atMs, by) });
}

/** What it shows, for one field: the same is offered again once it moved. null: it shows nothing to be taken. */
export function takeShown(nowMs: number): string | null {
  const now = connectedScale.read();
  const grams = now && offeredGrams(now.settling, nowMs);
  if (now && grams !== null) {
    connectedScale.write({ ...now, settling: { ...now.settling, takenGrams: grams } });
  }
  return grams;
}

export function endConnection(trouble: 'lost' | null): void {
  connectedScale.write(null);
  connectTrouble.write(trouble);
}
