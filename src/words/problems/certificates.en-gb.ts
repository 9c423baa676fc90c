/** What can be wrong with a supplier's paper on a lot. */
export const certificateProblems = {
  'certificate-of-ingredients': {
    says: '{where} is a lot of {found}, which no supplier’s paper says the constituents of.',
    mend: 'Enter the certificate with the lot of the ingredient that it is about.',
  },
  'certificate-says-nothing': {
    says: 'The certificate lists no constituent, and says neither that there is none nor a peroxide value nor what IFRA allows.',
    mend: 'Fill in what stands on the paper.',
  },
  'certificate-day-ahead': {
    says: '{where} is {found, date, long}, which has not come yet.',
    mend: 'Give the day that stands on the paper, {allowed, date, long} at the latest.',
  },
  'certificate-without-file': {
    says: '{where} has no file with it.',
    mend: 'Correct it, and give its PDF with the correction.',
  },
  'constituent-without-most': {
    says: 'Nobody says how much of {constituent} there is at the most.',
    mend: 'Give the measured figure, or the most of its range.',
  },
  'cas-number-shape': {
    says: '{found} does not look like a CAS number.',
    mend: 'Write it as on the paper, such as 78-70-6: two to seven digits, two digits, one digit. Several stand with a comma between them.',
  },
  'cas-number-check-digit': {
    says: '{found} is no CAS number: its last digit does not fit the others, so one of them is mistyped.',
    mend: 'Compare it with the paper digit by digit. Where the paper has it so, ask the supplier, or leave it empty.',
  },
  'peroxide-negative': {
    says: 'The peroxide value is {found}, and there is none below nought.',
    mend: 'Give it in mmol of peroxide in a litre, as on the paper.',
  },
  'lot-peroxide-over': {
    says: 'Lot {where} may not go into anything that is sold. {reason}',
    mend: 'Take another lot. If the oil was measured again, enter the newer certificate with the lot.',
  },
  'no-letter-to-supplier': {
    says: 'Nothing is open or only remembered that {found} could answer.',
    mend: 'Look at the list of letters again.',
  },
  'certificate-replaced-already': {
    says: 'Another paper, {found} of {by}, was entered instead of {where} already.',
    mend: 'Correct that one instead.',
  },
  'ifra-edition-number': {
    says: '{where} is “{found}”. IFRA numbers its amendments, and the statement names one.',
    mend: 'Write the number as on the paper, such as 51.',
  },
  'ifra-category-twice': {
    says: 'Category {found} stands twice in the conformity statement.',
    mend: 'Keep the line that stands on the paper.',
  },
} as const;
