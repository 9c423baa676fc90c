import { hasKeyboard } from '../show/has-keyboard.ts';
import { focusHeading } from './focus-heading.ts';

/** Long enough for what comes next to take the focus itself. */
const SETTLED_MS = 120;

/**
 * What had the focus may go with what was done by it: a step that is over, a button that may not be pressed any more. A
 * browser then gives the focus to nothing, and whoever works by keyboard or listens has lost their place: the heading has
 * it instead (WCAG 2.2, 2.4.3).
 */
export function startKeepingFocus(): void {
  let last: Element | null = null;
  const isLost = (): boolean =>
    last !== null &&
    document.activeElement === document.body &&
    (!last.isConnected || last.matches(':disabled'));
  function look(): void {
    if (!isLost()) return;
    last = null;
    // A finger needs no place to go on from: the page stays where it is.
    focusHeading({ preventScroll: !hasKeyboard() });
  }
  document.addEventListener('focusin', ({ target }) => {
    last = target instanceof Element ? target : null;
  });
  // Left for nothing, as by a click beside everything, nothing is lost.
  document.addEventListener('pointerdown', () => {
    if (document.activeElement === document.body) last = null;
  });
  const changes = { subtree: true, childList: true, attributes: true, attributeFilter: ['disabled'] };
  new MutationObserver(() => isLost() && setTimeout(look, SETTLED_MS)).observe(document.body, changes);
}
