/** What can be wrong with steps at the bench: begun, timed, whipped in rounds, photographed, weighed. */
export const stepProblems = {
  'step-begun-already': {
    says: '“{where}” has begun already: by {by}, {found}.',
    mend: 'Its time runs on this tablet too. If it began by mistake, strike the beginning with a reason.',
  },
  'step-without-rounds': {
    says: '“{where}” is not whipped in rounds.',
    mend: 'Begin it once, and say when it is done.',
  },
  'round-done-already': {
    says: 'Round {round} of “{where}” was looked at already, by {by}, {found}.',
    mend: 'If that entry is wrong, strike it with a reason, then enter it again.',
  },
  'load-stopped-already': {
    says: 'The load was whipped after round {stopped} of “{where}”, said {by}, {found}: round {round} does not go with it.',
    mend: 'If it was whipped on after all, strike the round that says stop with a reason, then enter it again.',
  },
  'cup-heavier-than-bowl': {
    says: 'The cup holds {found} g, and only {allowed} g lie in the bowl by what was weighed in.',
    mend: 'Take the weight of the empty cup off, and look at the point and the unit.',
  },
  'cup-density-unusual': {
    says: '{found} g in a millilitre: what is whipped, or about to be, has {least} to {most}.',
    mend: 'Look at the weight of the empty cup, at the point, and at the millilitres that it holds.',
  },
  'minutes-negative': { says: '{where} is less than no time.', mend: 'Give minutes from 0 up.' },
  'heat-absurd': {
    says: '{found} °C is no temperature at this bench (−40 to 250 °C).',
    mend: 'Look at the point, and whether the thermometer shows Celsius.',
  },
  'time-too-short': {
    says: '“{step}” wants {allowed} minutes, and had {found}.',
    mend: 'Let it stand until its time is over; or say what was done differently, and why.',
  },
  'bowl-heavier-than-filled': {
    says: '{found} g is more than the {allowed} g that lie in the bowl by what was weighed in.',
    mend: 'Take the tare off: bowl, pan or tub. If it is right all the same, say what was done differently, and why.',
  },
  'bowl-half-gone': {
    says: '{found} g is less than half of the {allowed} g that should be there.',
    mend: 'Look at the point and the unit, and whether all of it stood on the scale; or say what was done differently, and why.',
  },
  'photo-too-large': {
    says: 'The photograph for “{where}” has {found} kB; {allowed} kB fit into the record.',
    mend: 'Take it on the bench page, which shrinks it, or shrink it before.',
  },
  'photo-not-picture': {
    says: 'What was chosen for “{where}” is not a whole photograph (JPEG or PNG).',
    mend: 'Take it again.',
  },
  'photos-too-many': {
    says: '“{where}” has {allowed} photographs already.',
    mend: 'These have to do: they stay with the record.',
  },
  'hours-range-crossed': {
    says: '{where} is firm after {found} hours at the earliest, but after {allowed} at the latest.',
    mend: 'Swap the two.',
  },
  'volume-zero': { says: '{where} must be more than nothing.', mend: 'Give its millilitres.' },
  'loads-too-many': {
    says: 'With {found} ml in the bowl it would take more than {allowed} loads.',
    mend: 'Look whether the bowl is given in millilitres, and the butter in grams.',
  },
  'no-cup-weighed': { says: 'No cup was weighed.', mend: 'Weigh one cup or one tin, full and levelled.' },
} as const;
