/** What can be wrong with the design of a label, its codes and its sheet, in the words of whoever designs it. */
export const labelDeskProblems = {
  'gtin-wrong-length': {
    says: 'The article number “{found}” must be made of {allowed} figures.',
    mend: 'Copy it once more from the list of numbers that you hold.',
  },
  'gtin-check-digit-wrong': {
    says: 'The article number {gtin} ends in {found}; its other figures ask for {allowed}.',
    mend: 'One figure is wrong or two are swapped. Compare it with the list of numbers that you hold.',
  },
  'link-domain-wrong': {
    says: '“{found}” is no web address that a code can lead to.',
    mend: 'Write the address of your own site, such as larkfold.example.',
  },
  'link-lot-wrong': {
    says: 'The batch number “{found}” cannot stand in such a code: it takes 1 to {allowed} letters, figures and plain signs, no blank.',
    mend: 'Take a code of your own instead, or a shorter number.',
  },
  'link-date-wrong': {
    says: '“{found}” is no day of the calendar.',
    mend: 'Write the day as year, month and day, such as 2027-05-31.',
  },
  'net-weight-too-small': {
    says: 'A content of {found} g is less than a hundredth of an ounce.',
    mend: 'Labels for the United States begin at {allowed} g.',
  },
  'label-without-pieces': {
    says: 'The design has no label.',
    mend: 'Add a surface, such as the lid.',
  },
  'label-without-language': {
    says: 'The design has no language.',
    mend: 'Choose at least one.',
  },
  'label-piece-name-taken': {
    says: 'Two labels of the design are called “{found}”, or a label has a name that is kept for the leaflet.',
    mend: 'Give each a name of its own.',
  },
  'label-leaflet-not-in-market': {
    says: 'In the United States nothing that a label must say may move to an enclosed leaflet this way.',
    mend: 'Take a larger label or a carton.',
  },
  'label-leaflet-empty': {
    says: 'The leaflet has nothing on it.',
    mend: 'Say whether precautions or ingredients move there, or take it out.',
  },
  'label-element-not-movable': {
    says: '{element} may not move to a leaflet; the law allows it for {allowed} alone.',
    mend: 'Leave it on the label.',
  },
  'us-warning-not-in-front': {
    says: 'The United States want the warning that the product’s safety has not been determined on the front, and the precautions stand elsewhere (21 CFR 740.10, from memory, check).',
    mend: 'Choose what stands on the front of the label, and tick the precautions there.',
  },
  'label-language-missing': {
    says: '{element} is not there in {language, select, en {English} fr {French} de {German} it {Italian} es {Spanish} other {{language}}}.',
    mend: 'Write it in that language, or take the language off the label.',
  },
  'label-element-nowhere': {
    says: '{element} stands on none of the labels.',
    mend: 'Put it on one of them.',
  },
  'label-element-lacks-room': {
    says: '{element} does not fit on {piece}, even in the smallest letters: {lackMm} mm of {measure} are lacking.',
    mend: 'It fits from {allowed} mm on. Or shorten the text, or move it to a leaflet or another label where that may be.',
  },
  'label-room-nowhere': {
    says: '{element} does not fit on {piece}, nor on any that a sheet of paper could hold.',
    mend: 'Shorten the text, or move it to a leaflet where the law allows that.',
  },
  'label-surface-wrong': {
    says: 'The measure {where} is {found} mm; more than 0 and at most {allowed} mm can be labelled.',
    mend: 'Measure once more, in millimetres.',
  },
  'label-letters-wrong': {
    says: 'The smallest letters are {found} mm high; nothing below {allowed} mm can be read.',
    mend: 'Choose {allowed} mm or more.',
  },
  'label-letters-crossed': {
    says: 'The smallest letters are {found} mm high, and the largest {allowed} mm.',
    mend: 'Make the largest no smaller than the smallest.',
  },
  'label-larger-than-sheet': {
    says: '{piece} measures {found}; a label of the sheet {sheet} has {allowed}.',
    mend: 'Print it on another sheet or on plain paper, or make the label smaller.',
  },
  'label-count-needs-reason': {
    says: 'It does not add up: {says}',
    mend: 'Count again, or write beside it why it is so.',
  },
  'code-not-writable': {
    says: 'No code can be made of “{found}”.',
    mend: 'Shorten the address or the batch number.',
  },
  'bleed-wrong': {
    says: 'The picture is to reach {found} mm beyond the cut; 0 to {allowed} mm can be.',
    mend: 'Two or three millimetres are usual.',
  },
  'artwork-not-readable': {
    says: 'The picture is no PNG or JPEG that can be read.',
    mend: 'Save it once more as PNG or JPEG.',
  },
  'artwork-stored-turned': {
    says: 'The picture is stored turned, and would be printed so.',
    mend: 'Turn it in any picture program and save it.',
  },
  'artwork-coarse': {
    says: 'At this size the picture has {found} dots an inch; below {allowed} it looks coarse.',
    mend: 'Take a larger picture if you have one.',
  },
  'artwork-words-not-measured': {
    says: 'What the picture says is not checked: neither its words nor the height of its figures.',
    mend: 'Measure the figures of the content on a print.',
  },
  'sheet-measure-wrong': {
    says: 'The measure {where} of the sheet is {found}; it can be {allowed}.',
    mend: 'Measure once more, in millimetres.',
  },
  'sheet-labels-overlap': {
    says: 'From label to label the sheet is said to have {found} mm ({where}), but a label alone has {allowed} mm.',
    mend: 'Measure from the edge of one label to the same edge of the next.',
  },
  'sheet-beyond-page': {
    says: 'The last label would end at {found} mm ({where}); the page has {allowed} mm.',
    mend: 'Check the margin, the number of labels and their distance.',
  },
  'piece-larger-than-paper': {
    says: '{where} measures {found}; on a sheet of paper there is room for {allowed}.',
    mend: 'Print it on a sheet of labels that is large enough, or make the design smaller.',
  },
  'piece-larger-than-label': {
    says: '{where} measures {found}; a label of this sheet has {allowed}.',
    mend: 'Take a sheet with larger labels, or make the design smaller.',
  },
  'first-position-wrong': {
    says: 'The sheet has no position {found}; its labels are counted from 1 to {allowed}.',
    mend: 'Count from the top left, row by row.',
  },
  'sheet-offset-wrong': {
    says: 'The print is to be moved by {found} mm ({where}); up to {allowed} mm either way can be.',
    mend: 'Put the paper in straight and print a trial sheet first.',
  },
} as const;
