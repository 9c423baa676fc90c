/** What the morning says of scales, and a plan of additions that are too small for the scales. */
export const scaleSayings = {
  'morning-scale-due': 'to be checked first',
  'morning-scale-held': 'did not pass its check',
  'morning-scale-weight': 'With its {weight} g weight, before the first weighing of the day.',
  'morning-scale-check': 'Check it',
  'way-needs':
    '{grams} g may be {tolerancePercent} % out{isNear, select, yes { and no more, since its limit or the report’s range is near} other {}}: the scales here weigh {least} g and more so.',
  'way-no-scale': '{grams} g: there is no scale that may weigh it.',
  'way-finer-own': '{scale} weighs it well enough.',
  'way-finer-held': '{scale} would weigh it well enough: it has to pass its check first.',
  'way-finer-step': 'A finer scale: one with steps of {step} g.',
  'way-blend':
    'A bottle of scents mixed ahead, with a lot of its own: {total} g ({parts}), enough for {batches, plural, one {one batch} other {# batches}}. Each batch takes {perBatch} g of it, in one weighing.',
  'way-larger': 'A larger batch: {grams} g and more.',
  'way-larger-than-bowl': 'A larger batch: {grams} g and more, but the bowl holds {bowl} g.',
  'way-premix':
    'A premix: {substance} g of {item} into {carrierGrams} g of {carrier}, {total} g in all. {portion} g of it bring the {dose} g; leave {brought} g out of the {carrier}.',
} as const;
