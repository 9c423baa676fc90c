/** What can be wrong with materials, lots, counts and movements. */
export const workStockProblems = {
  'ordered-in-future': {
    says: 'The day of ordering, {found, date, long}, has not come yet.',
    mend: 'Give the day on which it was ordered, {allowed, date, long} at the latest.',
  },
  'expected-before-ordered': {
    says: 'It is expected on {found, date, long}, before it was ordered on {allowed, date, long}.',
    mend: 'Give a later day, or leave it empty where the supplier named none.',
  },
  'nothing-on-its-way': {
    says: 'Nothing of {found} is on its way: it came in, or somebody took the word back.',
    mend: 'Look at the list of what to buy again.',
  },
  'label-name-holds-several': {
    says: '{where} holds {count} ingredients: {parts}. A list of ingredients has each in its own place, by how much there is of it.',
    mend: 'Enter each as a material of its own. What comes mixed is a base of them, each with its share from the supplier’s paper. Where it is one ingredient, put the second word in brackets.',
  },
  'packaging-kind-missing': {
    says: 'It is not said what kind of packaging {found} is.',
    mend: 'Choose tin, lid, label, box or other.',
  },
  'not-for-packaging': {
    says: '{where} is of ingredients; {found} is packaging.',
    mend: 'Leave it empty, or enter it as an ingredient.',
  },
  'not-for-ingredients': {
    says: '{where} is of packaging, and this is an ingredient.',
    mend: 'Leave it empty, or enter it as packaging.',
  },
  'pieces-not-whole': {
    says: '{where} is {found}, and pieces are counted whole.',
    mend: 'Give a whole number.',
  },
  'constituent-range-crossed': {
    says: 'The figures of {constituent} are {found}, and have to rise from the least to the most.',
    mend: 'Give the least first, the most last, and the typical between them.',
  },
  'constituents-above-whole': {
    says: 'The constituents are {found} % of the whole even at their least.',
    mend: 'Compare the supplier’s paper: the least amounts add up to at most {allowed} %.',
  },
  'constituent-twice': {
    says: '{found} stands twice among the constituents.',
    mend: 'Put both into one line, with the range of both.',
  },
  'statement-without-paper': {
    says: 'It is not said which paper lists everything in it that has a limit or must be named.',
    mend: 'Name the paper with its date, or choose that only part of it is known.',
  },
  'supplier-limit-without-paper': {
    says: 'It is not said which paper of the supplier allows at most {found} % in the finished product.',
    mend: 'Name the paper with its date.',
  },
  'material-kind-fixed': {
    says: 'This was entered as {allowed, select, packaging {packaging} other {an ingredient}}, and its lots are counted so.',
    mend: 'Add a new material for the other kind.',
  },
  'material-name-taken': {
    says: 'There is a material called {found} from the same supplier already.',
    mend: 'Use that one, or tell this one apart by its name.',
  },

  'gross-below-tare': {
    says: 'The tub with what is in it ({found} g) would weigh {difference} g less than the tub alone ({allowed} g).',
    mend: 'Check which figure is which: gross is with the tub, tare is the tub alone.',
  },
  'weighed-not-counted': {
    says: 'This is counted in pieces, not weighed.',
    mend: 'Give the number of pieces.',
  },
  'counted-not-weighed': {
    says: 'This is weighed, not counted.',
    mend: 'Give the gross weight and the tare.',
  },
  'count-above-came-in': {
    says: '{found}{unit, select, g { g} other {{found, select, 1 { piece} other { pieces}}}} of {item}, lot {where}, would be there, and never more than {allowed}{unit, select, g { g} other {{allowed, select, 1 { piece} other { pieces}}}} of this lot came in.',
    mend: 'Look at the number on the tub: another lot is counted under its own. If more came in than was written down, correct the lot\u2019s receipt first.',
  },
  'count-gains': {
    says: 'That is {gain}{unit, select, g { g} other {{gain, select, 1 { piece} other { pieces}}}} more of {item}, lot {where}, than the {allowed}{unit, select, g { g} other {{allowed, select, 1 { piece} other { pieces}}}} that stand in the book.',
    mend: 'Look at the number on the tub, at gross and tare. If it is right all the same, say so, and the difference is booked.',
  },
  'receipt-below-gone': {
    says: '{found}{unit, select, g { g} other {{found, select, 1 { piece} other { pieces}}}} cannot be all that came in of {item}: {allowed}{unit, select, g { g} other {{allowed, select, 1 { piece} other { pieces}}}} have gone out of this lot already.',
    mend: 'Give at least what has gone; if less is there now, weigh the tub and enter the count.',
  },
  'nothing-found': {
    says: 'Nothing of {found} would be there.',
    mend: 'Leave an empty tub out of the opening count.',
  },
  'received-past-date': {
    says: 'These goods were past their date ({found}) when they came in.',
    mend: 'Check the date, or hold them in quarantine.',
  },
  'retained-not-for-goods': {
    says: 'The place “{found}” is for samples of what is made here.',
    mend: 'Choose the shelf or another place.',
  },

  'lot-not-bought': {
    says: 'Lot {lot} was made here, so it has no supplier’s lot and no price.',
    mend: 'Leave {where} empty.',
  },
  'date-printed': {
    says: 'The date of these tins ({allowed}) is printed on them already.',
    mend: 'Block the lot where the date is wrong.',
  },
  'status-not-from-there': {
    says: '{where} is {now, select, quarantine {in quarantine} other {{now}}} and cannot become {found, select, quarantine {quarantined} other {{found}}}.',
    mend: 'From there it can go to: {allowed}.',
  },
  'status-reason-missing': {
    says: 'No reason is given for {found, select, released {releasing} blocked {blocking} rejected {rejecting} other {holding}} lot {lot}.',
    mend: 'Say in a few words why.',
  },
  'lot-wants-firm-word': {
    says: '{item} is not said to be firm yet; it may be from {found}.',
    mend: 'Say that it is firm, and it is released by that.',
  },
  'lot-wants-run-release': {
    says: 'These tins of {item} are released with their filling run.',
    mend: 'Release the filling run after its checks.',
  },
  'lot-not-to-be-firm': {
    says: '{where} of {item} is {found}: {reason}.',
    mend: 'Clear that up first.',
  },
  'lot-never-sets': {
    says: '{item} has no setting time, so nobody has to say that it is firm.',
    mend: 'Use it, or change its status.',
  },
  'lot-firm-already': {
    says: '{item} was said to be firm already ({found}).',
    mend: 'Nothing more is needed.',
  },
  'firm-too-early': {
    says: '{item} should not be firm before {allowed}.',
    mend: 'Say in a remark how you know that it is firm now, or wait.',
  },

  'place-not-said': {
    says: 'Lot {lot} of {item} stands in {found} places.',
    mend: 'Say which place is meant.',
  },
  'place-too-small': {
    says: '{place} has {allowed} {unit, select, g {g} other {{allowed, select, 1 {piece} other {pieces}}}} of {item} ({where}); {found} were asked.',
    mend: 'Choose another place, or weigh the tub or count the pieces there.',
  },
  'only-moves-arrive': {
    says: 'Only what is moved arrives somewhere.',
    mend: 'Leave the place it goes to empty.',
  },
  'moved-nowhere': {
    says: 'It stands on {found} already.',
    mend: 'Choose another place.',
  },
  'lot-kept-for-orders': {
    says: '{found} {unit, select, g {g} other {{found, select, 1 {piece} other {pieces}}}} of {item} were asked; {allowed} are not put aside for orders.',
    mend: 'Take from another lot, or free what is put aside first.',
  },
} as const;
