/** What can be wrong with scales and what is weighed on them. */
export const weighingProblems = {
  'interval-not-of-class': {
    says: 'A scale of class {accuracyClass} has no verification interval of {found} g; it may be {allowed} g.',
    mend: 'Read e and the class off the scale\u2019s plate once more.',
  },
  'load-outside-class': {
    says: '{where}: {found} g is outside of what its class and interval cover ({allowed} g).',
    mend: 'Read capacity, e and class off the scale\u2019s plate once more, or take a scale that holds it.',
  },
  'class-and-interval-together': {
    says: '{where} is missing: the errors of a class need the class and the verification interval e.',
    mend: 'Give both from the scale\u2019s plate, or neither and no errors in service.',
  },
  'no-scale-holds': {
    says: 'No scale holds {found} g at once.',
    mend: 'Weigh it in parts, make a smaller batch, or add a larger scale.',
  },
  'addition-not-shown': {
    says: '{found} g cannot be shown on {scale}, whose step is {allowed} g.',
    mend: 'Take a finer scale, make a premix of it, or make a larger batch.',
  },
  'addition-too-small': {
    says: '{found} g is below {allowed} g, the least that {scale} weighs within {tolerancePercent} %.',
    mend: 'Take a finer scale, make a premix of it, or make a larger batch.',
  },
  'below-minimum-load': {
    says: '{found} g is below the smallest load of {scale}.',
    mend: 'Take a finer scale, make a premix of it, or make a larger batch.',
  },
  'tolerance-out-of-range': {
    says: '{where} is {found}; a tolerance lies above 0 and is at most {allowed}.',
    mend: 'Give it as a share of the addition: 0.02 for 2 %.',
  },
  'addition-above-its-most': {
    says: '{where} is {found} g; its limit allows at most {allowed} g in this batch.',
    mend: 'Lower its share in the formula.',
  },
} as const;
