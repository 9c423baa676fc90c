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
  'label-size-wrong': {
    says: 'A label on an A4 sheet measures more than 0 and at most {allowed} mm; this one is said to have {found} mm ({where}).',
    mend: 'Measure the label once more, in millimetres.',
  },
  'figure-height-wrong': {
    says: 'The least height of the figures is {found}; it must be a number of millimetres above 0.',
    mend: 'Take the height that the law gives for the declared content.',
  },
  'declared-content-without-figure': {
    says: 'The declared content “{found}” has no figure.',
    mend: 'Write it as a number with its unit, such as 80 g.',
  },
  'opened-months-wrong': {
    says: 'The months after opening are {found}; they must be whole, {allowed}.',
    mend: 'Give whole months, or a best-before date instead.',
  },
  'label-diameter-too-small': {
    says: '{element} does not fit on a round label of {found} mm, even in the smallest letters that can be read.',
    mend: 'All of this side fits from {allowed} mm across. Or shorten the text, or put part of it on another label.',
  },
  'label-height-too-small': {
    says: '{element} does not fit on a label {found} mm high, even in the smallest letters that can be read.',
    mend: 'All of this side fits from {allowed} mm high at this width. Or shorten the text, or widen the label.',
  },
  'label-width-too-small': {
    says: '{element} has a word that is too wide for a label of {found} mm.',
    mend: 'That word fits from {allowed} mm wide.',
  },
  'label-text-too-long': {
    says: '{element} does not fit on a label of {found}, nor on any that an A4 sheet could hold.',
    mend: 'Shorten the text, or put part of it on a leaflet where the law allows that.',
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
