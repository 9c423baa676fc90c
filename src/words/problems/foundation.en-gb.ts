/** What can be wrong with anything typed or sent, with the workshop file, and with the machine it lies on. */
export const foundationProblems = {
  'number-missing': { says: '{where} is empty.', mend: 'Type a number, such as 12.5.' },
  'not-a-number': {
    says: '{where} is \u201c{found}\u201d, which is not a number.',
    mend: 'Type digits with a point before the decimals, such as 12.5.',
  },
  'comma-for-point': {
    says: '{where} is \u201c{found}\u201d. A comma may part thousands or decimals, so nothing is guessed.',
    mend: 'Type {allowed} if the comma was meant for the decimal point; otherwise leave it out.',
  },
  'mass-too-large': {
    says: '{where} is {found} g; at most {allowed} g can be kept exactly.',
    mend: 'Check the figure and its unit.',
  },
  'mass-too-fine': {
    says: '{where} is {found} g; the book counts whole millionths of a gram.',
    mend: 'Give at most six places after the point.',
  },
  'mass-negative': {
    says: '{where} is {found} g, less than nothing.',
    mend: 'Give a mass of nought or more.',
  },
  'mass-zero': { says: '{where} is nought.', mend: 'Give a mass above nought.' },
  'mass-absurd': {
    says: '{where} is {found} g, more than a tonne.',
    mend: 'Check the figure and its unit: the mass is in grams.',
  },
  'percent-out-of-range': { says: '{where} is {found} %.', mend: 'Give a percentage from 0 to 100.' },
  'money-negative': {
    says: '{where} is {found}, less than nothing.',
    mend: 'Give an amount of nought or more.',
  },
  'money-absurd': {
    says: '{where} is {found}, more than ten million.',
    mend: 'Check the figure and its currency.',
  },

  'field-missing': {
    says: '{where} is missing.',
    mend: 'Give {allowed, select, string {some text} number {a number} int {a whole number} boolean {yes or no} array {a list} object {its fields} record {its fields} other {it ({allowed})}}.',
  },
  'field-unknown': {
    says: '{where} is not a field that is known here.',
    mend: 'Leave it out, or check how it is spelt.',
  },
  'field-wrong-type': {
    says: '{where} is \u201c{found}\u201d.',
    mend: 'Give {allowed, select, string {text} number {a number} int {a whole number} boolean {yes or no} array {a list} object {its fields} record {its fields} other {what is expected: {allowed}}}.',
  },
  'value-too-small': {
    says: '{counted, select, string {{where} is too short: \u201c{found}\u201d.} array {{where} has too few entries.} other {{where} is {found}; the least is {allowed}.}}',
    mend: '{counted, select, string {Give at least {allowed, plural, one {# character} other {# characters}}.} array {Give at least {allowed, plural, one {# entry} other {# entries}}.} other {Give {allowed} or more.}}',
  },
  'value-not-above': {
    says: '{where} is {found}; it must be above {allowed}.',
    mend: 'Give more than {allowed}.',
  },
  'value-too-large': {
    says: '{counted, select, string {{where} is too long: \u201c{found}\u201d.} array {{where} has too many entries.} other {{where} is {found}; the most is {allowed}.}}',
    mend: '{counted, select, string {Give at most {allowed, plural, one {# character} other {# characters}}.} array {Give at most {allowed, plural, one {# entry} other {# entries}}.} other {Give {allowed} or less.}}',
  },
  'value-not-below': {
    says: '{where} is {found}; it must be below {allowed}.',
    mend: 'Give less than {allowed}.',
  },
  'value-not-one-of': { says: '{where} is \u201c{found}\u201d.', mend: 'Give one of: {allowed}.' },
  'value-not-multiple': {
    says: '{where} is {found}, not a whole multiple of {allowed}.',
    mend: 'Give a multiple of {allowed}.',
  },
  'value-refused': {
    says: '{where} is \u201c{found}\u201d, which does not fit.',
    mend: 'Check how it is written, and compare the description of the field.',
  },
  'format-regex': { says: '{where} is \u201c{found}\u201d.', mend: 'Give {pattern}.' },
  'format-date': {
    says: '{where} is \u201c{found}\u201d, which is not a day of the calendar.',
    mend: 'Give the day as year-month-day, such as 2026-11-27.',
  },
  'format-datetime': {
    says: '{where} is \u201c{found}\u201d, which is not a point in time.',
    mend: 'Give it with its offset, such as 2026-11-26T08:05:00Z.',
  },
  'format-base64': {
    says: '{where} is not a file in base64.',
    mend: 'Attach the file again.',
  },
  'format-other': {
    says: '{where} is \u201c{found}\u201d, which is not written as {allowed}.',
    mend: 'Check how it is written.',
  },

  'file-not-ours': {
    says: '{where} is not a workshop file of Gramwright. It was left as it is.',
    mend: 'Choose another file or folder.',
  },
  'file-newer': {
    says: '{where} was written by a newer Gramwright (its form is {found}; this one knows {allowed}). It was left as it is.',
    mend: 'Open it with the newer Gramwright, or bring this one up to date.',
  },
  'file-held': {
    says: '{where} is open in another Gramwright{address, select, nothing {} other { at {address}}}.',
    mend: 'Use that one, or close it first.',
  },
  'file-torn': {
    says: '{where} is damaged, or is no workshop file. It was left as it is.',
    mend: 'Restore the newest backup: gramwright restore FILE.',
  },
  'file-not-writable': {
    says: '{where} cannot be written.',
    mend: 'Give yourself the right to write there, or choose another folder.',
  },
  'folder-missing': {
    says: 'The folder of {where} is not there.',
    mend: 'Make the folder, or choose another.',
  },
  'disk-full': {
    says: 'The disk with {where} is full. Nothing of this was saved, and nothing before it was lost.',
    mend: 'Make room on the disk, then do it once more.',
  },
  'disk-trouble': {
    says: 'The disk with {where} did not do as it was told ({found}). Nothing of this was saved.',
    mend: 'Check the disk and its cable, then run gramwright check-up.',
  },
  'lot-overdrawn': {
    says: 'More would be taken from a lot than it has.',
    mend: 'Weigh the tub or count the pieces, enter the count, and try again.',
  },
  'revision-fixed': {
    says: 'A batch was made by this revision, so it is not changed any more.',
    mend: 'Write the next revision.',
  },
  'thing-not-found': {
    says: '{found, select, nothing {Something that was named is not there.} other {Nothing is known by \u201c{found}\u201d.}}',
    mend: 'Look it up in its list and choose it again.',
  },
  'person-unknown': {
    says: 'Nobody who works here is known by \u201c{found}\u201d.',
    mend: 'Choose who you are at the top of the page, or add the person.',
  },
  'entry-in-future': {
    says: 'This entry says that it was made on {found}; here it is {allowed} only.',
    mend: 'Set the clock of the phone or computer that it was entered on, and enter it again.',
  },
  'entry-before-its-thing': {
    says: 'This entry says that it was made on {found}; {thing} was there for it only from {allowed} on.',
    mend: 'Set the clock of the phone or computer that it was entered on, and enter it again.',
  },
  'stamp-used-otherwise': {
    says: 'Nothing was written: the number of this entry ({found}) stands in the record already, since {allowed}, for something else.',
    mend: 'Reload the page, look at what stands there, and enter it once more as a new entry.',
  },
  'changed-meanwhile': {
    says: '{where}: somebody changed this since you opened it. It now holds \u201c{holds}\u201d.',
    mend: 'Look at the newer one, then enter your change again if it is still needed.',
  },
} as const;
