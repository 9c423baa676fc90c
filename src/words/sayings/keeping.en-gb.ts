/** What a check-up looks at and finds. */
export const keepingSayings = {
  'check-integrity': 'The file is whole, page by page',
  'check-foreign-keys': 'Whatever a row names is there',
  'check-chain': 'The chain of {looked, plural, one {# entry} other {# entries}} is unbroken',
  'check-sequence': 'No entry is missing between the first and the last',
  'check-end':
    'The chain ends where it was noted to end{looked, plural, =0 {} one {, and holds what # backup ended with} other {, and holds what # backups ended with}}',
  'check-records': 'Each of {looked, plural, one {# record} other {# records}} has its entry',
  'check-rows': 'Every record, and everything that can be edited, is as the chain tells it',
  'check-balances': 'No lot has less than nothing ({looked, plural, one {# balance} other {# balances}})',
  'check-sound': 'Nothing wrong.',
  'check-wrong': '{count, plural, one {# wrong} other {# wrong}}: {which}.',
} as const;
