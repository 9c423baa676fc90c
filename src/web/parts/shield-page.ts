/** The second click of a double click comes within half a second (the usual setting of desktops). */
const SHIELDED_MS = 500;
let shield: HTMLElement | undefined;
let falls: ReturnType<typeof setTimeout> | undefined;

function raiseShield(): HTMLElement {
  const raised = document.createElement('div');
  raised.style.cssText = 'position:fixed;inset:0;z-index:2147483647;touch-action:none';
  raised.setAttribute('aria-hidden', 'true');
  // A dialog hides whatever is not marked so, and closes when it is touched.
  raised.dataset.reactAriaTopLayer = 'true';
  raised.addEventListener('mousedown', (event) => event.preventDefault());
  return raised;
}

/**
 * For a moment the page takes no click and no tap: what stands under the finger has just changed, and the second click
 * of a double click was not meant for it.
 */
export function shieldPage(): void {
  clearTimeout(falls);
  shield ??= raiseShield();
  if (!shield.isConnected) document.body.append(shield);
  falls = setTimeout(() => shield?.remove(), SHIELDED_MS);
}
