/** What a trace says first. */
export const traceSayings = {
  'trace-answer':
    '{isTins, select, yes {Batch {number} of {item} was made of {behind, plural, =0 {nothing known} one {# lot} other {# lots}}: } other {{item}, lot {number}: }}{sent, plural, =0 {no tin went out} one {# tin went out} other {# tins went out}}{orders, plural, =0 {} one { with # order} other { with # orders}}, {here, plural, =0 {none is here} one {# is here} other {# are here}}.',
} as const;
