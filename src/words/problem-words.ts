/** A problem's two sentences: what is wrong, and how to mend it. ICU MessageFormat; `where`, `found`, `allowed`, `source` and any parameter may be named. */
export interface ProblemWords {
  readonly says: string;
  readonly mend: string;
}
