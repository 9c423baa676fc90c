export interface FormulaUse {
  readonly formulaId: string;
  /** Bases that its revision in force names. */
  readonly baseIds: readonly string[];
}

/** The formula itself and every other one that it goes into, through bases of bases too. */
export function listUsers(formulaId: string, uses: readonly FormulaUse[]): string[] {
  const users = new Set([formulaId]);
  // A set goes on to what is added to it while it is walked.
  for (const id of users) {
    for (const use of uses) if (use.baseIds.includes(id)) users.add(use.formulaId);
  }
  return [...users];
}
