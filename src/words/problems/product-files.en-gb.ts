/** What can be wrong with what is written in a product's file. */
export const productFileProblems = {
  'exposure-type-unknown': {
    says: 'The exposure table has no row {found}.',
    mend: 'Choose one of its rows.',
  },
  'claims-and-none': {
    says: 'It says that no effect is claimed, and {found, plural, one {# claim stands} other {# claims stand}} there.',
    mend: 'Take the tick or the claims out.',
  },
  'file-not-under-heading': {
    says: 'That file does not lie under this heading.',
    mend: 'Open the page again: somebody may have taken it out already.',
  },
  'dose-not-positive': {
    says: 'A point of departure is above nought; {found} mg/kg/day is not.',
    mend: 'Type the dose as the study gives it.',
  },
  'point-of-departure-twice': {
    says: 'There is a point of departure of {found} already.',
    mend: 'Change that one, so that it is clear from which dose a margin is reckoned.',
  },
} as const;
