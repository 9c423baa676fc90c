const things = (count: number): string => (count === 1 ? 'One thing' : `${count} things`);

/** What of a check hangs on memory, and letters to suppliers. */
export const memoryWords = {
  title: 'What hangs on memory',
  says: (firm: number, hangs: number, unknown: number): string =>
    hangs + unknown === 0
      ? 'Nothing hangs on a remembered figure.'
      : `${things(hangs)} would change if a remembered figure were wrong, ${unknown === 0 ? 'nothing is open' : `${unknown} ${unknown === 1 ? 'is' : 'are'} not known`}, ${firm} ${firm === 1 ? 'holds' : 'hold'} even so.`,
  hangs: 'Hangs on a remembered figure',
  unknown: 'Not known',
  firm: 'Holds even if memory errs',
  group: (title: string, count: number): string => `${title}: ${count}`,
  defined:
    'A remembered figure may be wrong by up to half of itself, more or less: what would then be judged otherwise, or named or not named otherwise, hangs on it.',
  write: 'Write to supplier',
  close: 'Close',
  reading: 'Writing …',
  nothingToAsk: 'Nothing is open or only remembered that a supplier could answer.',
  copy: 'Copy the letter',
  copied: 'Copied.',
  notCopied: 'The browser does not let the page copy: mark the text and copy it yourself.',
  print: 'Print the letter',
} as const;
