/** What can be wrong with a label or a paper, in the words of the person who has to mend it. */
export const printProblems = {
  'glyph-missing': {
    says: 'The print font has no sign for {found} ({codePoint}), character {position} of “{text}”.',
    mend: 'Write it with another character, or leave it out.',
  },
  'label-text-missing': {
    says: 'The label lacks {element}.',
    mend: 'Write what the label has to say there.',
  },
  'label-durability-missing': {
    says: 'The label says neither until when the product keeps nor how long after opening.',
    mend: 'Give a best-before date, or the months after opening if it keeps more than 30 months.',
  },
  'figure-height-wrong': {
    says: 'The least height of the figures is {found}; it must be a number of millimetres above 0.',
    mend: 'Take the height that the law gives for the declared content.',
  },
  'opened-months-wrong': {
    says: 'The months after opening are {found}; they must be whole, {allowed}.',
    mend: 'Give whole months, or a best-before date instead.',
  },
  'paper-text-too-long': {
    says: '{where} takes {found} mm of height; a page holds {allowed} mm.',
    mend: 'Shorten the text.',
  },
  'copies-wrong': {
    says: '{found} copies cannot be printed; whole numbers from {allowed} can.',
    mend: 'Give a number among these; where more are needed, print twice.',
  },
} as const;
