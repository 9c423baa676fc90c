import { useEffect, useState } from 'react';
import { useStore } from '../api/use-store.ts';
import { connectedScale } from './connected-scale.ts';
import type { ReadingTrouble, ScaleReading } from './reading.ts';
import { isRestless, offeredGrams, silentForMs } from './settle-reading.ts';

export interface ScaleAtHand {
  readonly isConnected: boolean;
  /** Exact, as decimal text; null: it tells no weight just now. */
  readonly grams: string | null;
  readonly isStable: boolean;
  /** Settled, told just now and not taken already. */
  readonly mayBeTaken: boolean;
  /** What it shows was taken, and it did not move since. */
  readonly isTaken: boolean;
  /** Whole seconds for which it has told nothing though it should have; null: it tells. */
  readonly silentSeconds: number | null;
  /** It has moved for longer than a scale takes to settle. */
  readonly isRestless: boolean;
  readonly trouble: ReadingTrouble | null;
  readonly told: ScaleReading['told'];
  readonly name: string;
}

const NONE: ScaleAtHand = {
  isConnected: false,
  grams: null,
  isStable: false,
  mayBeTaken: false,
  isTaken: false,
  silentSeconds: null,
  isRestless: false,
  trouble: null,
  told: null,
  name: '',
};

/** What the scale at this tablet shows now. It enters nothing by itself: a person takes it. */
export function useScaleReading(): ScaleAtHand {
  const scale = useStore(connectedScale);
  const [now, setNow] = useState(() => Date.now());
  const isConnected = scale !== null;
  useEffect(() => {
    if (!isConnected) return;
    setNow(Date.now());
    const ticking = setInterval(() => setNow(Date.now()), 1000);
    return () => clearInterval(ticking);
  }, [isConnected]);
  if (!scale) return NONE;
  const { reading, takenGrams } = scale.settling;
  const silentMs = silentForMs(scale.settling, now);
  return {
    isConnected: true,
    grams: reading?.grams ?? null,
    isStable: silentMs === null && (reading?.isStable ?? false),
    mayBeTaken: offeredGrams(scale.settling, now) !== null,
    isTaken: takenGrams !== null,
    silentSeconds: silentMs === null ? null : Math.floor(silentMs / 1000),
    isRestless: silentMs === null && isRestless(scale.settling, now),
    trouble: reading?.trouble ?? null,
    told: reading?.told ?? null,
    name: scale.name,
  };
}
