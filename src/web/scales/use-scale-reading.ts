import { useEffect, useState } from 'react';
import { useStore } from '../api/use-store.ts';
import { connectedScale } from './connected-scale.ts';
import type { ReadingTrouble, ScaleReading } from './reading.ts';
import { isRestless } from './settle-reading.ts';

export interface ScaleAtHand {
  readonly isConnected: boolean;
  /** Exact, as decimal text; null: it tells no weight just now. */
  readonly grams: string | null;
  readonly isStable: boolean;
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
  isRestless: false,
  trouble: null,
  told: null,
  name: '',
};

/** What the scale at this tablet shows now. It enters nothing by itself: a person takes it. */
export function useScaleReading(): ScaleAtHand {
  const scale = useStore(connectedScale);
  const [now, setNow] = useState(() => Date.now());
  const isMoving = scale?.settling.movingSince != null;
  useEffect(() => {
    if (!isMoving) return;
    const ticking = setInterval(() => setNow(Date.now()), 1000);
    return () => clearInterval(ticking);
  }, [isMoving]);
  if (!scale) return NONE;
  const { reading } = scale.settling;
  return {
    isConnected: true,
    grams: reading?.grams ?? null,
    isStable: reading?.isStable ?? false,
    isRestless: isRestless(scale.settling, now),
    trouble: reading?.trouble ?? null,
    told: reading?.told ?? null,
    name: scale.name,
  };
}
