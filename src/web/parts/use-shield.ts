import { useEffect } from 'react';
import { shieldPage } from './shield-page.ts';

/** Shields the page when a question comes, when another takes its place, and when it goes. `asked`: null while nothing is. */
export function useShield(asked: string | null): void {
  useEffect(() => {
    if (asked === null) return undefined;
    shieldPage();
    return shieldPage;
  }, [asked]);
}
