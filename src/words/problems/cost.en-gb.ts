/** What can be wrong with a costing. */
export const costProblems = {
  'loss-out-of-range': {
    says: '{where} is {found}; a loss is a fraction from 0 to below {allowed}.',
    mend: 'Give it as a fraction: 0.03 is three in a hundred.',
  },
  'more-out-than-in': {
    says: '{where} is {found} g, but only {allowed} g went in.',
    mend: 'Weigh what came out again, and look at the tare.',
  },
} as const;
