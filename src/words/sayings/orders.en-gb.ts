import { dayText as day, dayPartText as part } from '../near-text.ts';

const need = '{need, plural, one {# tin} other {# tins}}';
/** Tins of different products do not stand in for each other: of several no sum is said. */
const tins = `${need} {kinds, plural, one {needed, {have} put aside for it or free on the shelf} other {of # products needed, and all of them stand on the shelf}}`;
/** Where tins are still to be filled, what is counted are empty ones. */
const empties = `${need} {kinds, plural, one {needed, {have} empty ones on the shelf} other {of # kinds needed, and empty ones of each stand on the shelf}}`;
const firm = `{item} should be firm between ${part('from')} and ${part('to')}`;
const short =
  '{amount} {unit, select, g {g of {item}} other {of {item}}} {amount, select, 1 {is} other {are}} short';
const others =
  '{others, plural, =0 {} one { # other thing is short too.} other { # other things are short too.}}';
/** The day comes from what takes longest, which may be another than the thing that is named. */
const delivery = '{others, plural, =0 {delivery takes} other {the longest delivery takes}}';
const late = `{isLate, select, yes {Late, it was wanted by ${day('wantedBy')}: it can go today} other {Can go out today}}`;

/** Whether an order can go by the day it is wanted, in the maker's words. */
export const ordersSayings = {
  'order-is-sent': 'Everything in it is sent.',
  'order-is-cancelled': 'Cancelled: nothing is put aside for it.',
  'order-not-known':
    'Not known: nobody has written down how {item} is made.{others, plural, =0 {} one { The same goes for # other.} other { The same goes for # others.}}',
  'order-goes-from-shelf': `${late}: ${tins}.`,
  'order-goes-when-released': `${late} once {waiting, plural, one {# filled tin is} other {# filled tins are}} released: {need, plural, one {# tin} other {# tins}} needed.`,
  'order-goes-when-made': `Can go out ${day('day')}, made and filled the same day: ${empties}.`,
  'order-goes-when-firm': `Can go out ${day('day')}: ${firm}; ${empties}.`,
  'order-goes-when-said-firm': `Can go out ${day('day')} once somebody says that {item} is firm: it should be by now; ${empties}.`,
  'order-goes-when-melted': `Can go out ${day('day')} if {item} is melted today: it should be firm between ${part('from')} and ${part('to')}; ${empties}.`,
  'order-goes-late': `Late, it was wanted by ${day('wantedBy')}: it can go ${day('day')}, made and filled the same day.`,
  'order-goes-late-when-firm': `Late, it was wanted by ${day('wantedBy')}: it can go ${day('day')}, as ${firm}{mustMelt, select, yes {, if it is melted today} other {}}.`,
  'order-goes-if-firm-soon': `Not surely by ${day('wantedBy')}: {item}{mustMelt, select, yes {, melted today,} other {}} may be firm as early as ${part('from')}, but at the longest only ${part('to')}.`,
  'order-sets-too-long': `Not by ${day('wantedBy')}: ${firm}{mustMelt, select, yes {, if it is melted today} other {}}.`,
  'order-short': `{isKnown, select, yes {Not by ${day('wantedBy')}} other {Not known}}: ${short}, and nobody has said how long delivery takes.${others}`,
  'order-goes-if-ordered': `Can go by ${day('wantedBy')} if {item} is ordered by ${day('orderBy')}: ${short}; ${delivery} {days, plural, =0 {no time} one {# day} other {# days}}, so ${day('day')} at the earliest{isRange, select, yes { and ${day('last')} at the longest} other {}} if ordered today.${others}`,
  'order-may-not-be-made':
    'Cannot be promised: {units, plural, one {# tin has} other {# tins have}} to be made, and {item}, revision {number}, may not be made for sale.{others, plural, =0 { Its check says why.} one { The same goes for # other; the checks say why.} other { The same goes for # others; the checks say why.}}{ready, plural, =0 {} one { # finished tin can go.} other { # finished tins can go.}}',
  'order-check-fails': 'It cannot be checked as it is written down: look at its check.',
  'order-short-until-bought': `Not before {item} is bought: ${short}; ${delivery} {days, plural, =0 {no time} one {# day} other {# days}}, so ${day('day')} at the earliest{isRange, select, yes { and ${day('last')} at the longest} other {}} if ordered today.${others}`,
  'order-short-on-its-way': `Not before {item} comes: ${short}. It was ordered on {orderedOn, date, ::dMMMM}{hasSupplier, select, yes { from {supplier}} other {}}{when, select, none {, and nobody has said when it comes} past {, and was expected ${day('expectedOn')}} other {, and is expected ${day('expectedOn')}}}{hasDay, select, yes {: ${day('day')} at the earliest} other {}}.${others}`,
  'order-step-check': 'Mend {item}, revision {number}, or what its check asks: it may not be made for sale',
  'order-step-set':
    '{item} sets{isRange, select, yes { for {least} to {most} hours} other { for {most} hours}}, and a person says that it is firm',
  'order-step-wait': 'Wait for {amount}{unit, select, g { g} other {}} of {item}: it is ordered',
  'order-step-keep-others':
    'Put other tins of {product} aside: {units, plural, one {# that was} other {# that were}} put aside may not go any more',
  'order-step-release': 'Release {units, plural, one {# filled tin} other {# filled tins}} of {product}',
  'order-step-fill': 'Fill {units, plural, one {# tin} other {# tins}} of {product} from the bowl',
  'order-step-fill-same-day':
    'Fill {units, plural, one {# tin} other {# tins}} of {product}, the same day as it is made',
  'order-step-finish': 'Finish batch {number} of {item}, and let it set',
  'order-when-day': day('day'),
  'order-when-days': `${day('day')}, or ${day('last')} at the longest`,
  'order-when-here': 'once what is short has come',
  'order-when-not-said': 'nobody has said how long delivery takes',
  'order-when-ordered': `ordered today, it is here ${day('day')}`,
  'order-when-expected': `expected ${day('day')}`,
  'order-when-overdue': 'now: its longest setting time is over',
  'order-when-firm-by': `it may be firm already, at the longest ${part('to')}`,
  'order-when-firm-at': `firm ${part('to')}`,
  'order-when-firm-between': `firm between ${part('from')} and ${part('to')}`,
  'order-act-check': 'See its check',
  'order-act-plan': 'Plan it',
  'order-act-buy': 'To what to buy',
  'order-act-release': 'Look and release',
  'order-act-fill': 'Fill it',
  'order-act-go-on': 'Go on',
  'order-act-firm': 'Look whether it is firm',
} as const;
