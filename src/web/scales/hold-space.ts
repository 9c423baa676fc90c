/** What a person presses with the space bar. */
const PRESSED = 'button, [role="button"], summary';

/** Something that a press goes to: an element of the page. */
export interface Pressable {
  closest(selector: string): { click(): void } | null;
}

export interface SpaceHolder {
  /** A key went down there; true: it must not reach what has the focus. */
  readonly down: (key: string, target: Pressable | null) => boolean;
  /** A key came up; true as above. */
  readonly up: (key: string) => boolean;
}

/**
 * A scale that types pads its line with spaces, and the space bar presses the button that has the focus. So a space is
 * held back for as long as a scale takes to the next key: where none comes it was a person, and the button is pressed.
 */
export function makeSpaceHolder(later: (then: () => void) => () => void): SpaceHolder {
  let letGo: (() => void) | undefined;
  let isDown = false;
  return {
    down(key, target) {
      letGo?.();
      letGo = undefined;
      const pressed = key === ' ' ? target?.closest(PRESSED) : null;
      if (!pressed) return false;
      // Held down it comes again and again: that is one press.
      if (!isDown) letGo = later(() => pressed.click());
      isDown = true;
      return true;
    },
    up(key) {
      if (key !== ' ' || !isDown) return false;
      isDown = false;
      return true;
    },
  };
}
