import { materialWords } from '../../../words/index.ts';
import type { MaterialDraft } from './material-draft.ts';

/** What stands below a field: where its value comes from, as long as it is the one that was filled in. */
export type SourceOf = (field: keyof MaterialDraft) => string | undefined;

export const sourceOf =
  (draft: MaterialDraft, first: MaterialDraft, sources: Readonly<Record<string, string>>): SourceOf =>
  (field) => {
    const source = sources[field];
    return source !== undefined && draft[field] === first[field]
      ? materialWords.form.filledFrom(source)
      : undefined;
  };
