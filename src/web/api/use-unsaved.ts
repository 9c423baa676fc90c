import { useCallback, useEffect, useId } from 'react';
import { unsaved } from './unsaved.ts';

/**
 * While `isUnsaved`, leaving the page asks first (the shell's LeaveGuard, and the browser itself on reload and closing).
 * The answer lets go: call it once a write is kept and before navigating on, since the state of this render still says
 * that something is typed.
 *
 *     const letGo = useUnsaved(!isSame(draft, first));
 *     if (await save.write(...)) { letGo(); await navigate(...); }
 */
export function useUnsaved(isUnsaved: boolean): () => void {
  const form = useId();
  useEffect(() => {
    unsaved.mark(form, isUnsaved);
    return () => unsaved.mark(form, false);
  }, [form, isUnsaved]);
  return useCallback(() => unsaved.mark(form, false), [form]);
}
