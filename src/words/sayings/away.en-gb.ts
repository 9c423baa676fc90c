/** What tablets did while they were away. */
export const awaySayings = {
  'claim-addition': '{grams} g of {item}, lot {lot}',
  'claim-step': '\u201c{step}\u201d done',
  'claim-fill': 'A tin of {grams} g gross',
  'claim-other': '{what}',
  'claim-fact': '{field}: {value}',
  'morning-claims-open':
    '{open, plural, one {One entry of a tablet that was away asks} other {# entries of a tablet that was away ask}} what is to become of {open, plural, one {it} other {them}}.',
  'morning-claim-asks': 'to be answered',
  'morning-answer-claims': 'Answer',
  'morning-claims-elsewhere': 'Entries from a tablet that was away',
} as const;
