/** What can be wrong with a composition that is checked against law, Standards and report. */
export const safetyProblems = {
  'nothing-but-scent': {
    says: 'Every line counts as scent, and nothing is left to put it in.',
    mend: 'Leave at least one line out of the scent.',
  },
  'line-not-there': { says: 'There is no line {found}.', mend: 'Name a line of the formula.' },
  'blend-empty': { says: 'The blend has no oil.', mend: 'Name at least one oil and its share.' },
  'shares-all-nought': {
    says: 'No oil has a share of the blend.',
    mend: 'Give at least one a share above nought.',
  },
  'share-negative': { says: '{where} is {found}.', mend: 'A share is nought or more.' },
  'share-above-one': {
    says: '{where} goes up to {found}.',
    mend: 'As a range, a share is a fraction of the blend, from 0 to 1.',
  },
  'share-range-crossed': {
    says: '{where} goes from {found} to {allowed}: the least is above the most.',
    mend: 'Turn the two round.',
  },
  'shares-too-much': {
    says: 'The least shares come to {found} of the blend.',
    mend: 'Together they may be 1 at the most: lower one of them.',
  },
  'shares-too-little': {
    says: 'The most that the oils may be comes to {found} of the blend.',
    mend: 'Together they must reach 1: raise one of them.',
  },
  'margin-out-of-range': {
    says: '{where} is {found}.',
    mend: 'A margin is a fraction of the limit, {allowed}.',
  },
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
