/** What can be wrong with products, customers, orders and parcels. */
export const workOrdersProblems = {
  'product-of-a-base': {
    says: '{found} is a base: it is kept for mixtures and not filled into tins.',
    mend: 'Choose a mixture, or write one down that is made of this base.',
  },
  'product-without-recipe': {
    says: 'The formula that {found} is filled from has no recipe yet.',
    mend: 'Write the recipe down first.',
  },
  'tins-not-cleared': {
    says: 'Tins of {found} stand that were released for other markets: {runs}. They were not checked for {markets}.',
    mend: 'Enter a product of its own for {markets}; or add the market once these tins are sent, used up or blocked.',
  },
  'not-packaging': {
    says: '{where} is {found}, which is an ingredient.',
    mend: 'Choose packaging, or enter it as packaging.',
  },
  'product-twice': {
    says: '{found} stands there twice.',
    mend: 'Put both into one line.',
  },
  'product-withdrawn': {
    says: '{found} is not sold any more.',
    mend: 'Choose another product, or take the withdrawal back.',
  },
  'customer-erased': {
    says: 'Name and address of this customer were erased for good.',
    mend: 'Add the customer anew.',
  },
  'wanted-before-placed': {
    says: 'It would be wanted by {found}, before it was placed on {allowed}.',
    mend: 'Change one of the two days.',
  },
  'order-cancelled': {
    says: 'Order {found} was cancelled.',
    mend: 'Enter it as a new order.',
  },
  'order-sent-whole': {
    says: 'Everything of order {found} was sent: there is nothing left to cancel.',
    mend: 'If a parcel did not go after all, take it back first.',
  },
  'tracking-of-erased': {
    says: 'The customer of order {found} was erased: no tracking number is kept for it.',
    mend: 'Nothing has to be done: what was sent stays in the record.',
  },
  'line-below-kept': {
    says: '{found} of {product} would be ordered, and {allowed} are put aside for this order or sent already.',
    mend: 'Order at least {allowed}, or cancel the order and enter it anew.',
  },
  'nothing-to-keep': {
    says: 'There is no released tin to put aside for order {found}.',
    mend: 'Fill what is missing and release it; a tin that is put aside for another order stays there.',
  },
  'nothing-to-send': {
    says: 'Nothing of order {found} can be sent: no released tin is put aside for it or free.',
    mend: 'Fill what is missing and release it first.',
  },
  'lot-behind-stopped': {
    says: 'Batch {where} may not be used or go out: lot {found} of {item}, which is in it, was stopped since. {reason}',
    mend: 'Trace the stopped lot to see what else it went into. Release it again once it is found good.',
  },
  'labels-by-older-law': {
    says: 'Labels of batch {where} for {market, select, GB {Great Britain} NI {Northern Ireland} US {the United States} other {the EU}} are worded as of {labelledOn, date, long}: {names, plural, =0 {} other {they do not name {which}, as Regulation (EU) 2023/1545 asks}}{doubts, plural, =0 {} other {{names, plural, =0 {} other {, and }}nobody has decided whether it asks for {undecided} to be named}}. Tins with them may be placed on the market until {placedUntil, date, long}; what was placed by then may be sold on until {soldUntil, date, long}{stop, select, none {.} placed {, and nothing shows that these were placed by then.} other {, and that day is past.}}',
    mend: 'Print its labels anew and stick them over the old ones, or sell the product in another market only.',
  },
  'parcel-back-already': {
    says: 'This parcel was taken back already: its tins stand on the shelf.',
    mend: 'Look at the order as it stands now.',
  },
  'nothing-kept-to-pick': {
    says: 'No tin is put aside for order {found}, and none was sent.',
    mend: 'Put tins aside for it first.',
  },
} as const;
