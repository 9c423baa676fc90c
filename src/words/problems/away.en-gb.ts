/** What is wrong with what a tablet did while it was away. */
export const awayProblems = {
  'claims-open': {
    says: '{found, plural, one {One entry of a tablet that was away is} other {# entries of a tablet that was away are}} not answered yet for {where}.',
    mend: 'Open it and say of each whether it is entered after all or set aside: until then nobody knows what is in it.',
  },
  'claim-answered-already': {
    says: 'It is answered already, by {by}: {found, select, entered {entered after all} other {set aside}}.',
    mend: 'Nothing is left to do. Look at the record to see how it stands now.',
  },
  'kept-as-question': {
    says: 'The workshop has this entry as a question already, since {allowed}.',
    mend: 'Answer it under Making: it is entered by the answer, or set aside.',
  },
  'claim-not-enterable': {
    says: 'It cannot be entered as it was sent ({found}).',
    mend: 'Set it aside with a reason, and enter what is true on the page of its batch.',
  },
  'tablet-clock-behind': {
    says: 'The tablet\u2019s clock was far behind when this was entered: it says {found}, and was likely {allowed}.',
    mend: 'Say when it really was.',
  },
  'workshop-needed': {
    says: 'The new amounts are worked out by the workshop\u2019s computer, which has to have all that was entered here first.',
    mend: 'Wait until this tablet is connected and nothing waits on it, or go on as planned.',
  },
  'answer-outstanding': {
    says: 'The workshop\u2019s computer has not answered. It is asked again, and until it answers the new amounts are not known here.',
    mend: 'Weigh nothing more of this batch until the line at the top says that all is saved at the workshop.',
  },
  'tablet-keeps-nothing': {
    says: 'This tablet could not keep the entry ({found}), so it was not sent either.',
    mend: 'Make room on the tablet, or allow this page to keep data, then enter it again.',
  },
} as const;
