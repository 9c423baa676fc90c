export const startWords = {
  title: 'First start',
  says: 'Nothing is written down yet. Look round an example workshop, or start your own.',
  soft: 'Everything stays in one file on this computer.',
  example: {
    title: 'The example workshop',
    says: 'Invented people, goods, orders and a base that is setting: try everything, nothing is sold. The Workshop page says how to begin your own later.',
    open: 'Open the example',
  },
  own: {
    title: 'My own workshop',
    form: 'Start my own workshop',
    name: 'Name of the workshop',
    nameHint: 'As it stands on your labels; it can be changed later.',
    person: 'Your name',
    personHint: 'Each entry carries the name of the person who made it.',
    start: 'Start',
  },
} as const;
