/** The write that keeps a form, while it is under way: whether it was kept. */
export type UnderWay = () => Promise<boolean> | undefined;

const NO_WRITE: UnderWay = () => undefined;

export interface Unsaved {
  /** Tells that a form holds something that is not kept yet, or no longer does. */
  readonly mark: (form: string, isUnsaved: boolean, underWay?: UnderWay) => void;
  readonly isAny: () => boolean;
  /** Waits for what is being kept at this moment: only what is left unsaved then is lost. */
  readonly isAnyAfterSaving: () => Promise<boolean>;
}

export function makeUnsaved(): Unsaved {
  const forms = new Map<string, UnderWay>();
  return {
    mark(form, isUnsaved, underWay = NO_WRITE) {
      if (isUnsaved) forms.set(form, underWay);
      else forms.delete(form);
    },
    isAny: () => forms.size > 0,
    async isAnyAfterSaving() {
      const saves = [...forms.values()].map((underWay) => underWay());
      // A form with no write under way will not be kept by waiting.
      if (saves.includes(undefined)) return true;
      return (await Promise.all(saves)).includes(false);
    },
  };
}

/** The forms on this page that are half typed: asked before the page is left. */
export const unsaved: Unsaved = makeUnsaved();
