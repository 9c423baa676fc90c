import { useEffect, useRef, useState } from 'react';
import { FASTEST_HAND_MS, makeTypedCatcher } from './catch-typed.ts';
import { makeSpaceHolder } from './hold-space.ts';
import { patternOf, readerSettings } from './reader-settings.ts';

/**
 * Hears a scale that types like a keyboard, wherever the focus is: its number comes to `onReading` and its Enter goes
 * nowhere, so that neither a form nor a button takes it for a person's. Answers the last one that came so.
 */
export function useTypedReading(onReading: (grams: string) => void): string | null {
  const [last, setLast] = useState<string | null>(null);
  const hear = useRef(onReading);
  hear.current = onReading;
  useEffect(() => {
    const caught = makeTypedCatcher(patternOf(readerSettings.read()));
    const spaces = makeSpaceHolder(soon);
    const listen = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.altKey || event.metaKey) return;
      const { reading, isOfScale } = caught({ key: event.key, atMs: event.timeStamp });
      const isEnter = event.key === 'Enter';
      // Another field of this page may have held it already.
      const target = event.defaultPrevented || isOfScale ? null : buttonOf(event.target);
      const isHeld = spaces.down(event.key, target);
      // Its digits may go into a field, where they are put right at the end; a button must not have them, nor its Enter.
      if (isHeld || (isOfScale && (isEnter || !isField(event.target)))) keepBack(event);
      if (reading?.grams != null) {
        hear.current(reading.grams);
        setLast(reading.grams);
      }
    };
    const release = (event: KeyboardEvent) => {
      if (spaces.up(event.key)) keepBack(event);
    };
    window.addEventListener('keydown', listen, true);
    window.addEventListener('keyup', release, true);
    return () => {
      window.removeEventListener('keydown', listen, true);
      window.removeEventListener('keyup', release, true);
    };
  }, []);
  return last;
}

function soon(then: () => void): () => void {
  const waiting = setTimeout(then, FASTEST_HAND_MS);
  return () => clearTimeout(waiting);
}

function keepBack(event: KeyboardEvent): void {
  event.preventDefault();
  event.stopPropagation();
}

const buttonOf = (target: EventTarget | null): Element | null =>
  target instanceof Element && !isField(target) ? target : null;

const isField = (target: EventTarget | null): boolean =>
  target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement;
