/** Whether the labels of a run add up. */
export const labelCountSayings = {
  'labels-none': 'None printed.',
  'labels-run-open': '{printed} printed; the run is still being filled.',
  'labels-uncounted': '{printed} printed; not counted yet.',
  'labels-add-up':
    '{printed} printed, {used} on tins, {spoilt} spoilt: {left, plural, =0 {none is} one {# is} other {# are}} left over.',
  'labels-too-few':
    '{used} on tins and {spoilt} spoilt are {lacking, plural, one {# more than was} other {# more than were}} printed. Count again, or find where the others came from.',
  'labels-tins-without':
    '{apart, plural, one {# tin carries} other {# tins carry}} none, as it was counted: label {apart, plural, one {it} other {them}}, or count again.',
  'labels-more-than-tins':
    '{apart, plural, one {# label is} other {# labels are}} counted on tins that are not there: the run has {tins}. Count again.',
  'labels-all-none': 'Nothing was printed for this run yet.',
  'labels-all-open': 'The run is being filled: labels are counted once it is closed.',
  'labels-all-uncounted':
    '{uncounted, plural, one {One kind of label is} other {# kinds of label are}} printed and not counted yet.',
  'labels-all-add-up': 'Every label is accounted for.',
  'labels-all-look': '{wrong, plural, one {One kind of label does} other {# kinds of label do}} not add up.',
} as const;
