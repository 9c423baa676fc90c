import { useEffect, useState } from 'react';

/** `off`: the browser has none, or refused it (a low battery does). */
export type Wake = 'held' | 'off';

/**
 * Keeps the screen on while the page is in sight (Screen Wake Lock, W3C): whoever weighs has no clean finger to wake it
 * with. The browser lets go whenever the page is out of sight, so it is asked for again when it is back.
 */
export function useWakeLock(): Wake {
  const [wake, setWake] = useState<Wake>('off');
  useEffect(() => {
    let lock: WakeLockSentinel | undefined;
    let isOver = false;
    const ask = async (): Promise<void> => {
      if (document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
      try {
        const held = await navigator.wakeLock.request('screen');
        if (isOver) return void held.release();
        lock = held;
        lock.onrelease = () => setWake('off');
        setWake('held');
      } catch {
        setWake('off');
      }
    };
    const askAgain = () => void ask();
    document.addEventListener('visibilitychange', askAgain);
    askAgain();
    return () => {
      isOver = true;
      document.removeEventListener('visibilitychange', askAgain);
      void lock?.release();
    };
  }, []);
  return wake;
}
