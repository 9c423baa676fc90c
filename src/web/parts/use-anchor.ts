import { useLocation } from '@tanstack/react-router';
import { type RefObject, useEffect, useRef } from 'react';

/** Brings the part that the address names into view and gives it the keyboard: it is drawn only after its data came. */
export function useAnchor(anchor: string | undefined): RefObject<HTMLElement | null> {
  const place = useRef<HTMLElement>(null);
  const isNamed = useLocation({ select: ({ hash }) => anchor !== undefined && hash === anchor });
  useEffect(() => {
    if (!isNamed) return;
    place.current?.scrollIntoView();
    place.current?.focus({ preventScroll: true });
  }, [isNamed]);
  return place;
}
