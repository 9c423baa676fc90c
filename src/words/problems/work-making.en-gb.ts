/** What can be wrong when a batch is planned, started, weighed in and finished, or a lot is taken from. */
export const workMakingProblems = {
  'item-short': {
    says: 'There is too little of {where}: {found}{unit, select, g { g} other {}} of {allowed}{unit, select, g { g} other {}}; {short}{unit, select, g { g} other {}} missing.',
    mend: 'Make less, take in more, or weigh the tub and enter the count.',
  },
  'batch-hindered': {
    says: '{purpose, select, sale {It may not start for sale} other {It cannot start}}: {reason}',
    mend: '{purpose, select, sale {Mend that first; a trial may be made meanwhile, and is never sold.} other {Mend that first.}}',
  },
  'product-not-of-formula': {
    says: '{found} is not made by this formula.',
    mend: 'Choose a product of this formula.',
  },
  'base-not-filled': {
    says: '{found} is a base: it is kept and used in mixtures, and not filled into tins.',
    mend: 'Size it by grams, or choose a mixture.',
  },
  'batch-not-making': {
    says: '{where} is {found, select, made {made already} abandoned {given up} other {{found}}}, and takes no more entries.',
    mend: 'Look at its record. What was noticed late can be written down as done differently.',
  },
  'addition-done-already': {
    says: 'This was weighed in already: {found} g.',
    mend: 'If that entry is wrong, strike it with a reason, then enter the right weight.',
  },
  'reading-doubtful': {
    says: '{question}',
    mend: 'Look at the scale again: enter what it shows in grams, or say that it is right.',
  },
  'net-not-gross-less-tare': {
    says: 'Gross less tare is {allowed} g, and not {found} g.',
    mend: 'Enter gross and tare again.',
  },
  'nothing-weighed-yet': {
    says: 'Nothing is weighed in here yet.',
    mend: 'Weigh in what there is first.',
  },
  'substitute-not-for-sale': {
    says: '{item} (lot {where}) is not in this formula. Limits, report and label were judged without it, so a batch for sale cannot have it.',
    mend: 'Write a new revision with it, have it checked, and make the batch by that; or make a trial.',
  },
  'spilt-of-another-lot': {
    says: 'That weighing was of another lot.',
    mend: 'Choose the lot that was weighed.',
  },
  'resize-of-nothing': {
    says: 'Nothing of it is in, so nothing can be worked out from it.',
    mend: 'Weigh it in first.',
  },
  'resize-hindered': {
    says: 'It cannot be made so large or so small: {reason}',
    mend: 'Keep it as it is, with what was done differently; or strike the weighing.',
  },
  'resize-changed': {
    says: 'Something of {where} was weighed, struck or taken since this was worked out.',
    mend: 'Have it worked out again.',
  },
  'resize-weighed-by': {
    says: 'Of {items} something was weighed since the batch was made larger or smaller: it would not be right without that.',
    mend: 'Strike what was weighed since first, or make the batch as large as what is in.',
  },
  'batch-has-recipe': {
    says: '{where} is made by its formula.',
    mend: 'Weigh in what its sheet asks for.',
  },
  'batch-without-recipe': {
    says: '{where} is made by hand, and its formula is not written yet.',
    mend: 'End it with “That was all”, which writes the formula from what was weighed.',
  },
  'yield-half-gone': {
    says: '{found} g is less than half of the {allowed} g that went in: the rest would be lost.',
    mend: 'Look at the point, the unit and the vessel, and whether all of it stood on the scale; or say that so much is gone.',
  },
  'closed-over-limits': {
    says: '{item}: with {found} g and no more of it, {reason}',
    mend: 'Make the rest smaller, or get the rest of it. Left so, the release stops the batch.',
  },
  'lot-asked-about': {
    says: '{where}: what a tablet brought back late for {found} is not answered yet, so nobody knows what is in this {item}.',
    mend: 'Answer it under Making, or take another lot.',
  },
  'made-again-named': {
    says: 'This was begun as {formula} made again: it stays one, and its lot is one of {formula}. “{found}” would be a formula of its own.',
    mend: 'Leave the name empty, or have what was weighed written down as a new formula too.',
  },
  'formula-not-written': {
    says: 'Nothing of {where} is written down yet.',
    mend: 'Make it as something new, and give it its name at the end.',
  },
  'method-stands': {
    says: 'This formula has its method already.',
    mend: 'Tell what was done differently, and why.',
  },
  'makings-too-few': {
    says: 'Made {found, plural, =0 {not once} one {once} other {# times}} so far; a line that wanders can be told from {allowed} makings on.',
    mend: 'Make it again.',
  },
  'part-is-all': {
    says: 'With this {found} g are in, and {allowed} g are enough: nothing more of it is to come.',
    mend: 'Enter it as the last weighing of it.',
  },
  'step-done-already': {
    says: '\u201c{where}\u201d is done already, by {by}, {found}.',
    mend: 'If that entry is wrong, strike it with a reason, then enter it again.',
  },
  'lot-of-another-item': {
    says: 'Lot {where} is {found}, which is not what is weighed in here.',
    mend: 'Take a lot of the right material.',
  },
  'lot-not-firm': {
    says: 'Nobody has said yet that {item}, lot {where}, is firm. By its setting time it may be from {found} on.',
    mend: 'Look at it; when it is firm, say so on its page.',
  },
  'lot-not-released-for-use': {
    says: '{item}, lot {where}, is {found, select, quarantine {in quarantine} blocked {blocked} rejected {rejected} other {{found}}}{reason, select, none {} other { ({reason})}}.',
    mend: 'Take another lot, or have this one released by name.',
  },
  'lot-expired': {
    says: '{item}, lot {where}, was best before {found}.',
    mend: 'Take another lot.',
  },
  'lot-past-keeping': {
    says: '{item}, lot {where}, was to be looked at again by {found}.',
    mend: 'Look at it; if it is good, say on its page that it is firm.',
  },
  'lot-of-a-trial': {
    says: '{item}, lot {where}, was made as a trial, and nothing of a trial goes into what is sold.',
    mend: 'Take a lot that was made for sale.',
  },
  'lot-of-older-revision': {
    says: '{item}, lot {where}, was made by an older revision, and limits and label are those of the newest.',
    mend: 'Take a lot of the newest revision; or write a revision that is as this lot was made.',
  },
  'lot-too-small': {
    says: 'Lot {where} of {item} holds {allowed}{unit, select, g { g} other {}} by the book; {found}{unit, select, g { g} other {}} was asked for.',
    mend: 'Weigh the tub or count the pieces and enter the count; or take the rest from another lot.',
  },
  'weight-outside-band': {
    says: '{found} g of {item} is not what is wanted: {allowed} g, between {low} and {high} g.',
    mend: 'Add or take out until it is inside; or say what was done differently, and why.',
  },
  'heat-not-wanted': {
    says: '{found} °C is not what “{step}” wants:{least, select, other { {least} °C at the least}}{most, select, other {, {most} °C at the most}}.',
    mend: 'Look whether it was typed right; or say what was done differently, and why.',
  },
  'lot-not-planned': {
    says: 'The sheet asks for another lot of {item} than {where}.',
    mend: 'Take the lot on the sheet; or say what was done differently, and why.',
  },
  'weighed-late': {
    says: '{item} is weighed in late: \u201c{found}\u201d is done already.',
    mend: 'Say what was done differently, and why; or strike the later entry too, and do it again.',
  },
  'weighed-over-limits': {
    says: 'With {found} g of {item} in it the batch may not be sold. {reason}',
    mend: '{remedy} If it stays as it is, say so: the batch then goes on like a trial, its release is held, and it is never sold.',
  },
  'screen-unknown': {
    says: 'There is no screen {found}; this batch has {allowed}.',
    mend: 'Choose one of its screens, or none.',
  },
  'entry-struck-already': {
    says: 'That entry of {found} is struck already.',
    mend: 'Nothing more to do.',
  },
  'additions-missing': {
    says: '{found, plural, one {# addition is} other {# additions are}} not weighed in yet: {items}.',
    mend: 'Weigh in what is missing, or give the batch up with a reason.',
  },
  'yield-above-input': {
    says: '{found} g cannot come out of {input} g that went in; with the errors of all weighings it is {allowed} g at most.',
    mend: 'Weigh again, with the bowl\u2019s tare taken off; or strike a weighing that is wrong.',
  },

  'batch-not-held': {
    says: 'Nothing is to be decided of {where}: at the worst of its weighings it keeps every limit, or not all of it is weighed in.',
    mend: 'Look at the batch again.',
  },
  'worst-case-changed': {
    says: 'Something of {where} was weighed or struck since the page was opened.',
    mend: 'Look at the batch again, and decide on what it is now.',
  },
} as const;
