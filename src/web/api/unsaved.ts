export interface Unsaved {
  /** Tells that a form holds something that is not kept yet, or no longer does. */
  readonly mark: (form: string, isUnsaved: boolean) => void;
  readonly isAny: () => boolean;
}

export function makeUnsaved(): Unsaved {
  const forms = new Set<string>();
  return {
    mark(form, isUnsaved) {
      if (isUnsaved) forms.add(form);
      else forms.delete(form);
    },
    isAny: () => forms.size > 0,
  };
}

/** The forms on this page that are half typed: asked before the page is left. */
export const unsaved: Unsaved = makeUnsaved();
