/** A mouse comes with a keyboard, or with a scale that types; a finger would only call up the keyboard on the screen. */
export const hasKeyboard = (): boolean => matchMedia('(hover: hover) and (pointer: fine)').matches;
