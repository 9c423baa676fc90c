import { type ShouldBlockFn, useBlocker } from '@tanstack/react-router';
import { shellWords } from '../../words/index.ts';
import { unsaved } from '../api/unsaved.ts';
import { Button } from '../parts/button.tsx';
import { Dialog } from '../parts/dialog.tsx';

/** Another view of the same page keeps its forms. */
const isLoss: ShouldBlockFn = ({ current, next }) => unsaved.isAny() && current.pathname !== next.pathname;

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
