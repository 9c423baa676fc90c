/** What can be wrong with customers' words on products. */
export const complaintProblems = {
  'effect-is-serious': {
    says: 'With a mark of a serious effect it is a serious undesirable effect.',
    mend: 'Let it count as serious, or take the mark out.',
  },
  'serious-without-mark': {
    says: 'Nothing says what makes it serious.',
    mend: 'Tick what happened: a hospital stay, a lasting or passing incapacity, a disability, an anomaly at birth, a risk of life, or death.',
  },
  'health-effect-counts': {
    says: 'What somebody’s skin or health is said to have done counts as an undesirable effect at first.',
    mend: 'Let it count as one; once it is looked into, a later word can say that it is none.',
  },
  'run-of-another-product': {
    says: 'Batch {found} is of another product.',
    mend: 'Choose the product that the number stands on, or leave the batch open.',
  },
  'received-in-future': {
    says: 'It cannot have been received on {found, date, long}, after today.',
    mend: 'Check the day.',
  },
  'complaint-names-customer': {
    says: '{found} is a customer’s name, and what is written here can never be erased.',
    mend: 'Write “the customer” instead; the order leads to who it was.',
  },
  'serious-not-looked-into': {
    says: 'A serious undesirable effect is not closed before it was looked into.',
    mend: 'Say first what was found, and who was told.',
  },
} as const;
