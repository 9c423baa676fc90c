/** A field as a person reads it: its label and what stands in it. */
export type Described = readonly (readonly [label: string, value: string])[];

export interface Difference {
  readonly label: string;
  readonly mine: string;
  readonly theirs: string;
}

/** Where two descriptions of the same thing differ, in the order of the first. */
export function findDifferences(mine: Described, theirs: Described): Difference[] {
  const labels = [...new Set([...mine, ...theirs].map(([label]) => label))];
  const valueIn = (side: Described, label: string) => side.find(([own]) => own === label)?.[1] ?? '';
  return labels
    .map((label) => ({ label, mine: valueIn(mine, label), theirs: valueIn(theirs, label) }))
    .filter((row) => row.mine !== row.theirs);
}
