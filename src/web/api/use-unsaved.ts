import { useCallback, useEffect, useId } from 'react';
import { type UnderWay, unsaved } from './unsaved.ts';

/**
 * While `isUnsaved`, leaving the page asks first (the shell's LeaveGuard, and the browser itself on reload and closing);
 * while `save` is under way, leaving waits for it and asks only where it was refused. The answer lets go: call it once a
 * write is kept and before navigating on, since the state of this render still says that something is typed.
 *
 *     const letGo = useUnsaved(!isSame(draft, first), save);
 *     if (await save.write(...)) { letGo(); await navigate(...); }
 */
export function useUnsaved(isUnsaved: boolean, save?: { readonly underWay: UnderWay }): () => void {
  const form = useId();
  const underWay = save?.underWay;
  useEffect(() => {
    unsaved.mark(form, isUnsaved, underWay);
    return () => unsaved.mark(form, false);
  }, [form, isUnsaved, underWay]);
  return useCallback(() => unsaved.mark(form, false), [form]);
}
