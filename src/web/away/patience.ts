/** What somebody before the screen waits at the most (common practice, no source). */
export const PATIENCE_MS = 4_000;
/** What an answer may take: longer is silence (common practice, no source). */
export const ANSWER_MS = 15_000;
