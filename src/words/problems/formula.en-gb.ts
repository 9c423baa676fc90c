/** What can be wrong with a formula as it was typed, or once its bases are opened. */
export const formulaProblems = {
  'formula-without-lines': {
    says: 'The formula has no lines.',
    mend: 'Add what goes into it, with its grams.',
  },
  'formula-contains-itself': {
    says: '{where} contains itself: {found}.',
    mend: 'Take the base out of one of these formulas.',
  },
  'base-not-found': {
    says: '{where} takes a base that has no formula ({found}).',
    mend: 'Write the base down first, or choose another.',
  },
  'base-too-deep': {
    says: 'In {where} a base lies {found} bases deep; {allowed} can be opened.',
    mend: 'Write one of the bases out as materials.',
  },
  'constituent-range-disordered': {
    says: 'In {where} the constituent {constituent} stands as {found}: least, typical and most must not fall.',
    mend: 'Give the least first, then what is typical, then the most.',
  },
  'constituent-not-a-percent': {
    says: 'In {where} the constituent {constituent} stands as {found}, and one of these is no percentage.',
    mend: 'Give percentages from 0 to {allowed}, with eight places after the point at most.',
  },
} as const;
