import { useEffect, useRef, useState } from 'react';
import { makeTypedCatcher } from './catch-typed.ts';
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
    const listen = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.altKey || event.metaKey) return;
      const { reading, isOfScale } = caught({ key: event.key, atMs: event.timeStamp });
      const isEnter = event.key === 'Enter';
      // Its digits may go into a field, where they are put right at the end; a button must not have them, nor its Enter.
      if (isOfScale && (isEnter || !isField(event.target))) {
        event.preventDefault();
        event.stopPropagation();
      }
      if (reading?.grams != null) {
        hear.current(reading.grams);
        setLast(reading.grams);
      }
    };
    window.addEventListener('keydown', listen, true);
    return () => window.removeEventListener('keydown', listen, true);
  }, []);
  return last;
}

const isField = (target: EventTarget | null): boolean =>
  target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement;
