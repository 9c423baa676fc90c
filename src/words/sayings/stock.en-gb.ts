/** What the shelf and its lots say. */
export const stockSayings = {
  'known-from-memory': 'from memory, check',
  'known-from-several': 'several published tables that agree',
  'known-from-tables': 'published ranges: {sources}',
  'single-figure': 'a single figure, its range is not known',
  'movement-for-order': 'order {number}',
  'movement-for-run': 'filling run {number}',
  'movement-for-batch': 'batch {number}',

  'shelf-answer-empty': 'Nothing is written down yet that could stand here.',
  'shelf-answer-enough': 'Enough of everything for every open order.',
  'shelf-answer-watch':
    'Enough for every open order; {n, plural, one {# thing wants} other {# things want}} a look.',
  'shelf-answer-short':
    '{n, plural, offset:1 =1 {{item} does} =2 {{item} and one other thing do} other {{item} and # other things do}} not suffice for the open orders.',

  'shelf-short': 'short by {amount} {unit, select, g {g} other {{amount, select, 1 {piece} other {pieces}}}}',
  'shelf-lot-over': 'lot {lot} is past its day, {day, date, long}',
  'shelf-setting': 'lot {lot} is setting, firm between {from} and {to}',
  'shelf-all-held':
    'none may be used: lot {lot} is {status, select, quarantine {in quarantine} other {{status}}}',
  'shelf-lot-held': 'lot {lot} is {status, select, quarantine {in quarantine} other {{status}}}',
  'shelf-tins-missing': '{n, plural, one {# tin is} other {# tins are}} still to be made for open orders',
  'shelf-low':
    '{amount} {unit, select, g {g} other {{amount, select, 1 {piece} other {pieces}}}} left, below {below}{unit, select, g { g} other {}}',
  'shelf-use-first': 'use lot {lot} first, it ends on {day, date, long}',
  'shelf-none': 'none here',
  'shelf-enough': 'enough for every open order',
  'shelf-here': 'no open order asks for it',
} as const;
