/** How far each line of a formula may go up and down, and what breaks beyond. */
export const roomSayings = {
  'room-rise':
    '{name} may rise from {fromPercent} to {isIncluded, select, yes {} other {just below }}{toPercent} % before {breaks}.',
  'room-fall':
    '{name} may fall from {fromPercent} to {isIncluded, select, yes {} other {just above }}{toPercent} % before {breaks}.',
  'room-rise-none': '{name} may not rise at all: any more of it, and {breaks}.',
  'room-fall-none': '{name} may not fall at all: any less of it, and {breaks}.',
  'room-label-rise':
    '{name}, now {fromPercent} %: {isIncluded, select, yes {above {toPercent} %} other {at {toPercent} % and above}} {breaks}.',
  'room-label-fall':
    '{name}, now {fromPercent} %: {isIncluded, select, yes {below {toPercent} %} other {at {toPercent} % and below}} {breaks}.',
  'room-label-rise-none': 'With any more of {name} {breaks}.',
  'room-label-fall-none': 'With any less of {name} {breaks}.',
  'room-rise-free': 'Nothing that is known keeps {name} from rising.',
  'room-fall-free': '{name} may fall as far as wanted, as long as some of it stays in.',
  'room-whole': '{name} is the whole formula: there is nothing else that could give way.',
  'room-broken': 'As it is already: {breaks}. Nothing below says how far that is.',

  'room-breaks-limit': '{name} stops it ({rule}{hasMarkets, select, yes {; {markets}} other {}})',
  'room-breaks-supplier': 'the supplier of {name} stops it ({rule})',
  'room-breaks-report':
    '{isMost, select, yes {there is more of {name} than} other {there is less of {name} than}} report {report} covers',
  'room-breaks-name-added': 'the label has to name {name} ({markets})',
  'room-breaks-name-dropped': '{name} need no longer stand on the label ({markets})',
  'room-breaks-order': '{second} has to stand before {first} in the list of ingredients ({markets})',
  'room-breaks-leaves-list': '{name} is no longer in it and leaves the list of ingredients ({markets})',
} as const;
