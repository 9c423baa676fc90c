/** The page's heading is the place to go on from when what had the focus is gone. */
export const focusHeading = (how: FocusOptions = {}): void =>
  document.querySelector<HTMLElement>('main h1')?.focus(how);
