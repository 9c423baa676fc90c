/** What a plan and its weighing sheet say. */
export const makingSayings = {
  'sizing-tins': '{units, plural, one {# tin} other {# tins}} of {product}, {aimGrams} g each: {grams} g',
  'sizing-sample': 'Retained sample: {grams} g',
  'sizing-no-sample': 'No retained sample: {reason}',
  'sizing-bowl-loss':
    '{from, select, formula {{percent} % stays in bowl and pipes, learnt from the last {batches} batches of this formula ({least} to {most} %)} workshop {{percent} % stays in bowl and pipes, learnt from the last {batches} batches of the workshop ({least} to {most} %)} set {{percent} % stays in bowl and pipes, as you set it{batches, plural, =0 {} other {; learnt is {learnt} %}}} other {Left in bowl and spoon, {percent} %, as the product says}}: {grams} g',
  'sizing-batch': 'To make: {grams} g',
  'sizing-by-grams': 'Wanted: {grams} g',
  'sizing-most-grams': 'What is there suffices for {grams} g',
  'limited-by-check': '{formula}, revision {number}, may not be made for sale.',
  'limited-by-nothing': 'All that is wanted can be made.',
  'limited-by-material': 'No more can be made of what is there of {name}.',
  'limited-by-base': 'No more can be made of what is firm of {name}.',
  'limited-by-packaging': 'No more can be filled: {name} runs out first.',
  'limited-by-bowl': 'No more goes into the bowl.',
  'hindrance-too-many-tins':
    'Of {wanted, plural, one {# tin} other {# tins}} that are wanted, {possible, plural, =0 {none} other {#}} can be made.',
  'hindrance-too-large': '{grams} g is more than what is there suffices for.',
  'hindrance-asked':
    'Lot {lot} of {item}: what a tablet brought back late for {batch} is not answered yet. Answer it under Making.',
  'lot-is-used-up': 'Takes all that is left of this lot.',
  'lot-rest-left-out':
    'Lot {lot} has {grams} g left by the book and is not opened for that. Is it empty? Count it on the shelf.',
  'lot-number-not-known': 'Found at the opening count: the supplier\u2019s lot number is not known.',
  'lot-date-not-known': 'The best-before date of this lot is not known.',
  'share-now':
    'Other than planned went in before: the {targetGrams} g stay, and are {nowPercent} % now instead of {plannedPercent} %{verdict, select, none {} within {, still within the report ({leastPercent} to {mostPercent} %)} below {, less than the report asks for ({leastPercent} to {mostPercent} %)} other {, more than the report allows ({leastPercent} to {mostPercent} %)}}.',
  'weighed-most':
    'For what is in the bowl and still to come, at most {mostGrams} g of {item} are allowed: take the surplus out, if that can be done.',
  'weighed-least':
    'For what is in the bowl and still to come, at least {leastGrams} g of {item} are needed: put in what is missing and weigh again.',
  'weighed-dilute':
    'Or weigh in at least {addGrams} g more of {isOne, select, yes {{rest}} other {all the rest, in its shares ({rest})}}, which brings it within; whether there is so much, and whether the bowl holds it, is not checked here.',
  'weighed-target-too':
    'The planned {targetGrams} g of {item} would not be right either, for what was weighed in before: look at those weighings first.',
  'weighing-no-scale': 'No scale here carries {grams} g at once: weigh it in parts.',
  'weighing-in-parts':
    'Weigh it in parts: {count} times {part} g on {scale}{isLastOther, select, yes { (the last {last} g)} other {}}. All together they may be {error} g out.',
  'weighing-not-shown':
    '{scale} cannot show {grams} g; its step is {least} g. Take a finer scale, or make a premix.',
  'weighing-too-small':
    '{grams} g is less than {scale} weighs within {tolerancePercent} %, which takes {least} g. Take a finer scale, or make a premix.',
  'weighing-below-minimum-load':
    '{grams} g is below the smallest load of {scale}. Take a finer scale, or make a premix.',

  'worst-over':
    '{substance} may reach {percent} %{hasUse, select, yes { as {use}} other {}} with the errors of the scales; {isOfSupplier, select, yes {its supplier allows} other {the limit is}} {limitPercent} % ({rule}).',
  'worst-scale-unknown':
    'Nobody knows how far off the weighing of {items} may be: its scale is not known, or not what it may be wrong by there. Whether the limits are kept at the worst is not known.',
  'worst-add-one': 'Add {addGrams} g of {item}: strike its weighing, and enter {togetherGrams} g in all.',
  'worst-add-rest': 'Or add {addGrams} g of all the rest in the shares that it has: {rest}.',
  'room-stock': '{item}: {needGrams} g needed, {haveGrams} g on the shelf.',
  'room-bowl': 'The bowl would hold {togetherGrams} g; it takes {bowlGrams} g.',
  'room-tins':
    '{more, plural, one {# more tin} other {# more tins}} of {product} would be filled besides {planned}; {have} are there.',
  'room-left-over':
    '{missing, plural, one {# tin} other {# tins}} of {product} more could be filled than there are containers for: that stays as a leftover.',
  'resize-over': '{inGrams} g of {item} are in already; only {isGrams} g would be right.',
  'resized-to': 'Made {grams} g in all',
  'check-worst-kept': 'Even with the errors of the scales, every limit is kept.',
  'check-worst-held':
    'With the errors of the scales a limit may be broken, and nobody has decided on it: {which}',
  'check-worst-accepted':
    'With the errors of the scales a limit may be broken: {which} {by} decided to let it go: {reason}',
  'check-worst-refused':
    'With the errors of the scales a limit may be broken: {which} {by} decided against it: {reason}',
} as const;
