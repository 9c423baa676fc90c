/** A batch with every weighing as wrong as its scale may be. */
export const worstCaseWords = {
  kept: 'Even with the errors of the scales, every limit is kept.',
  held: 'Held: the errors of the scales may bring it over a limit',
  ways: 'Ways out:',
  noWay: 'Nothing in it is poor enough in this to thin it out.',
  orElse: (abandon: string): string => `Or let somebody decide with a reason, or give it up (“${abandon}”).`,
  orDecide: 'Its tins are released only once somebody has decided, with a reason.',
  decide: 'Decide on it',
  decideAgain: 'Decide on it anew',
  decideSays:
    'It is within as it was weighed; only the errors of the scales may bring it over. A named person decides, and the reason stays in the record.',
  decided: (verdict: 'accepted' | 'refused', by: string, reason: string): string =>
    `${by} decided ${verdict === 'accepted' ? 'to let it go' : 'against it'}: ${reason}`,
  reason: 'Reason',
  accept: 'Let it go',
  refuse: 'Decide against it',
} as const;
