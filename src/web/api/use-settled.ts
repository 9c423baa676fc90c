import { useEffect, useState } from 'react';

/** The value once typing has paused: nobody wants an answer to half a number (pause: common practice, no source). */
export function useSettled<T>(value: T, pauseMs = 300): T {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(value), pauseMs);
    return () => clearTimeout(timer);
  }, [value, pauseMs]);
  return settled;
}
