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
  'label-language-missing': {
    says: '{element} is not there in {language, select, en {English} fr {French} de {German} it {Italian} es {Spanish} other {{language}}}.',
    mend: 'Write it in that language, or take the language off the label.',
  },
  'label-element-nowhere': {
    says: '{element} stands on none of the labels.',
    mend: 'Put it on one of them.',
  },
} as const;
