import { useLocation } from '@tanstack/react-router';
import { type RefObject, useEffect, useRef } from 'react';

/**
 * Brings the part that the address names into view and gives it the keyboard: it is drawn only after its data came. One that
 * was folded is opened.
 */
export function useAnchor<Part extends HTMLElement = HTMLElement>(
  anchor: string | undefined,
): RefObject<Part | null> {
  const place = useRef<Part>(null);
  const isNamed = useLocation({ select: ({ hash }) => anchor !== undefined && hash === anchor });
  useEffect(() => {
    const part = place.current;
    if (!isNamed || part === null) return;
    if (part instanceof HTMLDetailsElement) part.open = true;
    part.scrollIntoView();
    part.focus({ preventScroll: true });
  }, [isNamed]);
  return place;
}
