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
  'premix-not-needed': {
    says: '{found} g is no less than {allowed} g, the least that can be weighed: it needs no premix.',
    mend: 'Weigh it as it is.',
  },
  'portion-below-smallest': {
    says: 'A portion of {found} g is below {allowed} g, the least that can be weighed.',
    mend: 'Give a portion of {allowed} g or more, or leave it out.',
  },
  'chart-too-few': {
    says: 'A chart needs {allowed} or more; there {found, plural, =0 {are none} one {is one} other {are #}}.',
    mend: 'Give more values.',
  },
  'chart-wants-values': {
    says: 'A chart of single values takes numbers; {where} is a list.',
    mend: 'Give numbers, or take a chart of subgroups.',
  },
  'chart-wants-subgroups': {
    says: 'A chart of subgroups takes lists of equal length; {where} is {found}.',
    mend: 'Put the values that belong together in a list each, or take the chart of individuals.',
  },
  'subgroups-not-equal': {
    says: '{where} has {found, plural, one {one value} other {# values}}; the first subgroup has {allowed}.',
    mend: 'Give each subgroup as many values.',
  },
  'subgroup-size-not-in-table': {
    says: 'Subgroups of {found}: the tables have factors for {allowed} values.',
    mend: 'Give smaller or larger subgroups, or take the chart of individuals.',
  },
  'reading-negative': {
    says: '{found} g is less than nothing.',
    mend: 'Take everything off, press zero, and weigh again.',
  },
  'reading-above-capacity': {
    says: '{found} g is more than this scale holds ({allowed} g).',
    mend: 'Read it again. What stood on another scale is entered with that one.',
  },
  'reading-tare-forgotten': {
    says: '{found} g looks as if the tub ({tareGrams} g) were in it: without it that is {netGrams} g.',
    mend: 'Enter {netGrams} g, or say that {found} g is net.',
  },
  'reading-ten-times': {
    says: '{found} g is far from {allowed} g. Did the point slip? {gramsThen} g would fit.',
    mend: 'Read the point again, or say that {found} g is right.',
  },
  'reading-other-unit': {
    says: '{found} g is far from {allowed} g. Does the scale show {unit, select, kg {kilograms} oz {ounces} lb {pounds} ozt {troy ounces} ct {carats} grain {grains} mg {milligrams} other {another unit}}? That is {gramsThen} g.',
    mend: 'Look at the unit beside the digits, set the scale to grams, or say that {found} g is right.',
  },
  'reading-not-zeroed': {
    says: '{found} g is {offGrams} g away from {allowed} g. Did the scale show 0 before?',
    mend: 'Take everything off, press zero, put it on again; or say that {found} g is right.',
  },
  'test-too-few': {
    says: 'A test needs {allowed} weighings; {found, plural, one {there is one} other {there are #}}.',
    mend: 'Go on until there are {allowed}.',
  },
  'held-scale-keeps-weight': {
    says: '{found} did not pass its last check: until it does, its check weight, tolerance, step and class stay as they were.',
    mend: 'Level it, wipe it, zero it, and let it pass with the weight that it failed with. Was that weight or step put down wrong, or the weight lost, put the scale down as a new one.',
  },
  'scale-held': {
    says: '{found} did not pass its check: it showed {reading} g for its {weight} g weight, and weighs nothing until it passes.',
    mend: 'Weigh on another scale, or let it pass a check first. If it was weighed on it all the same, say so.',
  },
  'scale-must-pass': {
    says: '{found} did not pass its check: it showed {reading} g for its {weight} g weight, and weighs nothing until it passes.',
    mend: 'Take another scale, or let it pass a check first.',
  },
  'check-weight-too-heavy': {
    says: 'A check weight of {found} g is more than {scale} holds ({allowed} g).',
    mend: 'Take a lighter one, best near half of what the scale holds.',
  },
  'reading-not-a-step': {
    says: 'This scale shows steps of {allowed} g; {found} g is none.',
    mend: 'Read it again. What stood on another scale is entered with that one.',
  },
  'reading-same-as-last': {
    says: '{found} g, to the last digit what came before it. Is it the same one twice?',
    mend: 'Take the next one, or say that it is another.',
  },
} as const;
