import { useNavigate, useSearch } from '@tanstack/react-router';
import { useEffect, useRef, useState } from 'react';
import type { Batch, Screen } from './batch.ts';

/** A screen by its number, or what comes after the last. */
type Step = number | 'end';

export const readBenchSearch = ({ step }: Record<string, unknown>): { readonly step?: Step } =>
  typeof step === 'number' || step === 'end' ? { step } : {};

const firstOpen = (screens: readonly Screen[]): number => {
  const index = screens.findIndex((screen) => screen.done === null);
  return index === -1 ? screens.length : index;
};

function placeOf(screens: readonly Screen[], step: Step | undefined): number | undefined {
  if (step === 'end') return screens.length;
  const index = screens.findIndex((each) => each.screen === step);
  return index === -1 ? undefined : index;
}

interface BenchPlace {
  readonly shown: number;
  readonly setShown: (place: number) => void;
  /** To the one after it, unless somebody has gone elsewhere meanwhile. */
  readonly goOnFrom: (place: number) => void;
}

/**
 * Which screen of the bench is shown. It opens where the work stands; from then on it is in the address, so that a
 * reload, a tablet that wakes up and the browser's way back mean what they say.
 */
export function useBenchPlace({ screens, resizes }: Batch): BenchPlace {
  const { step } = useSearch({ from: '/making/$id' });
  const navigate = useNavigate({ from: '/making/$id' });
  const [opened] = useState(() => firstOpen(screens));
  const shown = placeOf(screens, step) ?? opened;
  const setShown = (place: number) => {
    void navigate({ search: { step: screens[place]?.screen ?? 'end' } });
  };
  const now = useRef(shown);
  const seen = useRef(resizes.length);
  useEffect(() => {
    now.current = shown;
    if (seen.current === resizes.length) return;
    // Made larger, something that was done may be open again: the bench goes on there.
    seen.current = resizes.length;
    setShown(firstOpen(screens));
  });
  return { shown, setShown, goOnFrom: (place) => now.current === place && setShown(place + 1) };
}
