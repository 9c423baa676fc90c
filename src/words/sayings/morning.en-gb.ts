import { holdText } from '../hold-text.ts';
import { dayText as day, dayPartText as part } from '../near-text.ts';

const parcels =
  '{ready, plural, =0 {} one {One parcel can go today. } other {# parcels can go today. }}{late, plural, =0 {} one {One order is late. } other {# orders are late. }}{stuck, plural, =0 {} one {One order cannot go as promised. } other {# orders cannot go as promised. }}';

/** What the first page of the day says. */
export const morningSayings = {
  'morning-says': `${parcels}{pressing, select,
    meltLate {Melt {item} now: order {number}, wanted by ${day('wantedBy')}, is late at the longest setting time.}
    meltToday {Melt {item} today, so that order {number} can go by ${day('wantedBy')}.}
    melt {Melt {item} by ${day('begin')}, so that order {number} can go by ${day('wantedBy')}.}
    firm {See whether {item}, {lot}, is firm.}
    release {{item}: filled, and waiting for somebody to release it.}
    held {{item}: filled, and held at its release.}
    fill {Go on filling {item}.}
    make {Make {units, plural, one {# tin} other {# tins}} of {item} next.}
    check {{product} is ordered, and {item}, revision {revision}, may not be made for sale: its check says why.}
    buy {Buy {item} first{others, plural, =0 {} one {, and # other thing} other {, and # other things}}.}
    other {{ready, plural, =0 {Nothing is pressing.} other {Nothing else is pressing.}}}}`,
  'morning-report-past': 'review is past',
  'morning-report-close': 'review is near',
  'morning-report-by':
    '{isPast, select, yes {It was to be looked at again by {reviewBy, date, long}: nothing can be made for sale by it.} other {To be looked at again by {reviewBy, date, long}.}}',
  'morning-report-changes': 'What changed since',
  'morning-shaken': 'released, and would not be today',
  'morning-shaken-says':
    'What was learnt since of a lot in these tins would stop their release: block what is on the shelf, and see who has the rest ({units, plural, =0 {none is on the shelf} one {one is on the shelf} other {# are on the shelf}}).',
  'morning-shaken-look': 'Look and block',
  'morning-serious': 'A serious undesirable effect, and nobody has looked into it.',
  'morning-serious-open': 'has to be told',
  'morning-serious-received': 'Received on {receivedOn, date, long}.',
  'morning-serious-by':
    '{isPast, select, yes {To be told by {by, date, long}: that day is past.} other {To be told by {by, date, long} at the latest.}}',
  'morning-serious-at-once': 'To be told without delay.',
  'morning-first-materials': 'A new workshop: begin with the first steps below.',
  'morning-first-count': 'Count what stands on the shelf: weigh each tub, count the tins.',
  'morning-first-formula': 'Write the first formula down, in grams, as you make it.',
  'morning-first-product': 'Say what is sold: a formula in a tin, with its declared content.',
  'morning-order': 'Order {number}{hasCustomer, select, yes {, {customer}} other {}}',
  'morning-ready': 'ready',
  'morning-ready-late': 'ready, and late',
  'morning-cannot-go': 'tins are missing',
  'morning-kept-in-vain': 'put others aside',
  'morning-keep-others':
    'Tins that were put aside for it may not go any more: their lot was stopped, or ended.',
  'morning-wanted': `Wanted by ${day('wantedBy')}.`,
  'morning-tins-of': '{units} × {product}',
  'morning-pick': 'Pick and send',
  'morning-look': 'Look',

  'morning-batch': '{item}, {number}',
  'morning-bowl': '{item}, {number}',
  'morning-being-made': 'being made',
  'morning-planned': '{grams} g planned.',
  'morning-go-on': 'Go on',
  'morning-sets': 'sets',
  'morning-may-be-firm': 'may be firm',
  'morning-should-be-firm': 'should be firm',
  'morning-firm-between': `{grams} g, firm between ${part('from')} and ${part('to')}.`,
  'morning-is-firm': 'It is firm',
  'morning-being-filled': 'being filled',
  'morning-waits-for-release': 'waits for release',
  'morning-held': 'held',
  'morning-run-held': `May not be released: ${holdText}.`,
  'morning-run-planned': '{units, plural, one {# tin is} other {# tins are}} to be filled.',
  'morning-run-filled': '{units, plural, one {# tin} other {# tins}} filled.',
  'morning-run-for': `Order {number}, wanted by ${day('wantedBy')}, waits for {waiting} of them.`,
  'morning-run-for-shelf': 'No order waits for them: they go to the shelf.',
  'morning-release': 'Look and release',
  'morning-see-held': 'See what holds it',
  'morning-to-fill': 'to be filled',
  'morning-bowl-holds': '{grams} g in the bowl.',
  'morning-fill': 'Fill it',

  'morning-may-begin': 'to melt',
  'morning-begin-today': 'melt it today',
  'morning-begun-too-late': 'too late',
  'morning-melt-until': `{isLate, select, yes {At the longest setting time it comes too late for order {number}, wanted by ${day('wantedBy')}.} other {Begin {beginNear, select, today {} other {by }}${day('begin')}, so that order {number} can go by ${day('wantedBy')}.}}`,
  'morning-melt-grams': '{grams} g for what is ordered; what stays in the pot comes on top.',
  'morning-melt': 'Melt the base',
  'morning-base-there': 'everything is here',
  'morning-base-not-yet': 'not yet',
  'morning-once-firm': 'Once {item} is firm.',
  'morning-tins-to-make': '{units, plural, one {# tin} other {# tins}} to make.',
  'morning-lacks': 'something is short',
  'morning-late': 'late',
  'morning-barred': 'may not be made',
  'morning-not-for-sale': '{item}, revision {number}, may not be made for sale.',
  'morning-see-check': 'See its check',
  'morning-make-for': `For order {number}, wanted by ${day('wantedBy')}{others, plural, =0 {} one {, and # later order} other {, and # later orders}}.`,
  'morning-make': 'Make {units, plural, one {# tin} other {# tins}}',
  'morning-once-come': 'Once {item} has come: it is on its way.',
  'morning-buy-first': '{item} has to be bought first.',

  'morning-short': 'short',
  'morning-low': 'low',
  'morning-buy-short':
    '{short}{unit, select, g { g} other {}} short: {needed} needed for what is ordered, {have} here.',
  'morning-buy-low': '{have}{unit, select, g { g} other {}} left; it is bought again below {reorderBelow}.',
  'morning-buy-for': `Order {number}, wanted by ${day('wantedBy')}, waits for it.`,
  'morning-buy-pack': 'Comes in packs of {packSize}{unit, select, g { g} other {}}.',
  'morning-buy-lead': 'Delivery takes {days, plural, =0 {no time} one {# day} other {# days}}.',
  'morning-lead-unknown': 'Nobody has said how long delivery takes.',
  'morning-on-its-way': 'on its way',
  'morning-goods-late': 'should be here',
  'morning-ordered': `Ordered on {orderedOn, date, ::dMMMM}{hasSupplier, select, yes { from {supplier}} other {}}{expectedOnNear, select, none {; nobody has said when it comes} other {, {isPast, select, yes {was expected} other {expected}} ${day('expectedOn')}}}.`,
  'morning-to-shelf': 'To the shelf',
} as const;
