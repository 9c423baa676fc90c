/** What can be wrong with a composition that is checked against law, Standards and report. */
export const safetyProblems = {
  'exposure-basis-missing': {
    says: 'Nothing says how much of the product comes on the skin.',
    mend: 'Give {allowed}.',
  },
  'exposure-basis-twice': {
    says: '{where} is {found}, and a product type of the table is given besides.',
    mend: 'Give one of the two.',
  },
  'cas-check-digit-wrong': {
    says: '{where} is {found}, whose last digit does not fit the others.',
    mend: 'Compare the CAS number with the supplier’s paper, or leave it out and give the name.',
  },
  'last-supplied-before-first': {
    says: '{where} is {found}, before the first day of supply, {allowed}.',
    mend: 'Give a last day that is not before the first, or leave it out.',
  },
} as const;
