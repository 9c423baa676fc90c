import { type ShouldBlockFn, useBlocker } from '@tanstack/react-router';
import { shellWords } from '../../words/index.ts';
import { unsaved } from '../api/unsaved.ts';
import { Button } from '../parts/button.tsx';
import { Dialog } from '../parts/dialog.tsx';

/** A form that was kept goes on to its own page first: whoever has pressed a link since gets there after it. */
const nextTask = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

/** Another view of the same page keeps its forms; a save under way is waited for. */
const isLoss: ShouldBlockFn = async ({ current, next }) => {
  if (!unsaved.isAny() || current.pathname === next.pathname) return false;
  if (await unsaved.isAnyAfterSaving()) return true;
  await nextTask();
  return false;
};

/** Asks before a page with a half-typed form is left: what was typed is not kept anywhere yet. */
export function LeaveGuard() {
  const leaving = useBlocker({
    shouldBlockFn: isLoss,
    enableBeforeUnload: unsaved.isAny,
    withResolver: true,
  });
  const { title, says, leave, stay } = shellWords.leaving;
  return (
    <Dialog
      title={title}
      isOpen={leaving.status === 'blocked'}
      onClose={() => leaving.reset?.()}
      closeWord={stay}
    >
      <p>{says}</p>
      <div>
        <Button isStop isBench onPress={() => leaving.proceed?.()}>
          {leave}
        </Button>
      </div>
    </Dialog>
  );
}
