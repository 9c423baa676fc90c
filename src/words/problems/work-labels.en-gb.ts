/** What can be wrong when labels are designed, printed and counted. */
export const workLabelProblems = {
  'label-gtin-missing': {
    says: 'The code wants an article number, and this product has none.',
    mend: 'Write it down with the product, or take a code of your own.',
  },
  'label-domain-missing': {
    says: 'The code leads to a web address of your own, and none is written down.',
    mend: 'Write it down under Workshop, or take a code of your own.',
  },
  'label-piece-unknown': {
    says: 'The design has no label “{found}”; it has {allowed}.',
    mend: 'Load the page again and choose from what is there.',
  },
  'artwork-too-large': {
    says: '{file} has {found} MB; a picture may have {allowed} MB.',
    mend: 'Save it as JPEG, or make it smaller: 300 dots an inch are enough.',
  },
  'artwork-not-picture': {
    says: '{found} is no whole PNG or JPEG.',
    mend: 'Save it as PNG or JPEG from the program it was drawn in.',
  },
} as const;
