/** What a plan and its weighing sheet say. */
export const makingSayings = {
  'sizing-tins': '{units, plural, one {# tin} other {# tins}} of {product}, {aimGrams} g each: {grams} g',
  'sizing-sample': 'Retained sample: {grams} g',
  'sizing-no-sample': 'No retained sample: {reason}',
  'sizing-bowl-loss': 'Left in bowl and spoon, {percent} %: {grams} g',
  'sizing-batch': 'To make: {grams} g',
  'sizing-by-grams': 'Wanted: {grams} g',
  'sizing-most-grams': 'What is there suffices for {grams} g',
  'limited-by-nothing': 'All that is wanted can be made.',
  'limited-by-material': 'No more can be made of what is there of {name}.',
  'limited-by-base': 'No more can be made of what is firm of {name}.',
  'limited-by-packaging': 'No more can be filled: {name} runs out first.',
  'limited-by-bowl': 'No more goes into the bowl.',
  'hindrance-too-many-tins':
    'Of {wanted, plural, one {# tin} other {# tins}} that are wanted, {possible, plural, =0 {none} other {#}} can be made.',
  'hindrance-too-large': '{grams} g is more than what is there suffices for.',
  'lot-is-used-up': 'Takes all that is left of this lot.',
  'lot-number-not-known': 'Found at the opening count: the supplier\u2019s lot number is not known.',
  'lot-date-not-known': 'The best-before date of this lot is not known.',
  'weighing-no-scale': 'No scale here carries {grams} g at once: weigh it in parts.',
  'weighing-not-shown':
    '{scale} cannot show {grams} g; its step is {least} g. Take a finer scale, or make a premix.',
  'weighing-too-small':
    '{grams} g is less than {scale} weighs within {tolerancePercent} %, which takes {least} g. Take a finer scale, or make a premix.',
  'weighing-below-minimum-load':
    '{grams} g is below the smallest load of {scale}. Take a finer scale, or make a premix.',
} as const;
