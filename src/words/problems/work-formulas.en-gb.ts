/** What can be wrong with formulas, revisions, reports and decisions. */
export const workFormulasProblems = {
  'formula-code-taken': {
    says: 'The letters {found} open the batch numbers of {formula} already.',
    mend: 'Choose other letters.',
  },
  'formula-name-taken': {
    says: 'There is a formula called {found} already.',
    mend: 'Choose another name.',
  },
  'formula-kind-fixed': {
    says: 'It is written down as a {allowed} already, and was judged as one.',
    mend: 'Add a new formula for the {found}.',
  },
  'use-contradicted': {
    says: '{by, select, category {In IFRA category {word}} other {As {word}}} {isWashedOff, select, yes {it is washed off, and the use says that it stays on} other {it stays on the skin, and the use says that it is washed off}}.',
    mend: 'Set the one right that is wrong: naming thresholds and limits hang on it.',
  },
  'setting-range-crossed': {
    says: 'The shortest setting time ({found} h) is longer than the longest ({allowed} h).',
    mend: 'Give the shortest first.',
  },
  'celsius-range-crossed': {
    says: '{where}: {found} °C is above {allowed} °C.',
    mend: 'Give the lower temperature first.',
  },
  'mixture-in-formula': {
    says: '{found} is a mixture that tins are filled from, not a base.',
    mend: 'Use its base, or write it down as a base.',
  },
  'packaging-in-formula': {
    says: '{found} is packaging and is not weighed in.',
    mend: 'Choose an ingredient; packaging belongs to the product.',
  },

  'report-covers-nothing': {
    says: 'The report names neither a base nor a formula.',
    mend: 'Choose what the assessor’s report covers.',
  },
  'report-base-is-mixture': {
    says: '{found} is a mixture, not a base.',
    mend: 'Name it among the formulas that the report covers.',
  },
  'report-signed-ahead': {
    says: 'The report would be signed on {found, date, long}, which has not come yet.',
    mend: 'Give the day that stands on the report, {allowed, date, long} at the latest.',
  },
  'review-before-signing': {
    says: 'The report would have to be looked at again on {found}, not later than it was signed ({allowed}).',
    mend: 'Check both days on the report.',
  },
  'report-range-crossed': {
    says: '{where}: the least ({found} %) is above the most ({allowed} %).',
    mend: 'Give the least first.',
  },
  'listed-twice': {
    says: '{where} stands there twice.',
    mend: 'Leave one of them out.',
  },
  'file-too-large': {
    says: '{file} has {found} MB; at most {allowed} MB fit.',
    mend: 'Save the PDF with smaller pictures, or attach the signed pages only.',
  },
  'file-not-pdf': {
    says: '{found} is not a PDF.',
    mend: 'Save or scan the report as a PDF, then attach it.',
  },
  'file-not-pdf-or-picture': {
    says: '{found} is neither a PDF nor a picture (PNG or JPEG).',
    mend: 'Save it as one of these, then attach it: what is in the file counts, not its name.',
  },
  'picture-too-large': {
    says: '{file} has {found} MB; a picture may have {allowed} MB at most.',
    mend: 'Save it smaller, or as a JPEG.',
  },
  'picture-not-readable': {
    says: '{found} begins like a picture and cannot be read as one.',
    mend: 'It may have been cut short: save it anew, then attach it.',
  },
  'report-without-file': {
    says: 'No file lies with {where}.',
    mend: 'Attach the PDF first.',
  },

  'unknown-not-here': {
    says: 'This revision does not ask that question ({found}).',
    mend: 'Open the check again and decide what stands there.',
  },
  'decided-already': {
    says: 'About {substance} was decided already: {found}, by {by} (“{reason}”).',
    mend: 'Correct that decision where it was wrong; both stay readable.',
  },
  'unknown-changed-meanwhile': {
    says: 'What {substance} is, or how much of it there is, was changed since the page was opened.',
    mend: 'Look at the check again and decide upon what stands there now.',
  },
  'corrects-nothing': {
    says: 'There is no decision to correct.',
    mend: 'Decide it as a new question.',
  },
} as const;
