/** The answer to an order: when it can go, what stands in the way, what is to be done. */
export const promiseSayings = {
  'promise-can-go':
    'Can go out {isRange, select, yes {between {from} and {to}} other {{to}}}; wanted by {wantedBy}.',
  'promise-cannot-go':
    'Cannot go out by {wantedBy}: ready {isRange, select, yes {between {from} and {to}} other {{to}}}.',
  'promise-only-if-firm-early': 'In time for {wantedBy} only if it sets fast: ready between {from} and {to}.',
  'promise-if-supplier-delivers':
    'Something has to be bought first. If it comes as usual, ready {isRange, select, yes {between {from} and {to}} other {{to}}}; wanted by {wantedBy}.',
  'promise-unknown-until-bought': 'Wanted by {wantedBy}. No day can be named before something is bought.',
  'promise-on-shelf':
    '{item}: {need}{unit, select, g { g} other {}} needed, {onShelf}{unit, select, g { g} other {}} on the shelf.',
  'promise-firm-between': '{item} should be firm between {from} and {to}.',
  'promise-short':
    '{item}: {short}{unit, select, g { g} other {}} short, {need}{unit, select, g { g} other {}} needed and {have}{unit, select, g { g} other {}} here.',
  'promise-step-buy': 'Buy {amount}{unit, select, g { g} other {}} of {item}',
  'promise-step-make': 'Make {amount}{unit, select, g { g} other {}} of {item}',
  'promise-step-set': '{item} sets',
  'promise-step-firm': '{item} of lot {lot} sets',
  'promise-step-say-firm': 'Look at {item} of lot {lot}: it should be firm, and a person has to say so',
  'promise-step-release': 'Release {amount}{unit, select, g { g} other {}} of {item}',
} as const;
