/** What the morning says of scales, and a plan of additions that no scale weighs well enough at once. */
export const scaleSayings = {
  'morning-scale-due': 'to be checked first',
  'morning-scale-held': 'did not pass its check',
  'morning-scale-weight': 'With its {weight} g weight, before the first weighing of the day.',
  'morning-scale-check': 'Check it',
  'way-needs':
    '{grams} g may be {tolerancePercent} % out{isNear, select, yes { and no more, since its limit or the report’s range is near} other {}}: the scales here weigh {least} g and more so.',
  'way-no-scale': '{grams} g: there is no scale that may weigh it.',
  'way-not-held':
    '{grams} g may be {tolerancePercent} % out{isNear, select, yes { and no more, since its limit or the report’s range is near} other {}}: {scale} is good enough for that, but holds {most} g at most.',
  'way-between':
    '{grams} g may be {tolerancePercent} % out{isNear, select, yes { and no more, since its limit or the report’s range is near} other {}}: {scale} is good enough for that, but holds {most} g at most; a scale that holds it is good enough from {least} g on.',
  'way-in-parts':
    'In parts: {count} times {part} g on {scale}{isLastOther, select, yes { (the last {last} g)} other {}}. Each may be {partError} g out, all together {error} g.',
  'way-finer-held': '{scale} would weigh it well enough: it has to pass its check first.',
  'way-finer-step': 'A finer scale: one with steps of {step} g.',
  'way-finer-holding': 'Another scale: one that holds {grams} g, with steps of {step} g or less.',
  'way-blend':
    'A bottle of scents mixed ahead, with a lot of its own: {total} g ({parts}), enough for {batches, plural, one {one batch} other {# batches}}. Each batch takes {perBatch} g of it, in one weighing.',
  'way-larger': 'A larger batch: {grams} g and more.',
  'way-larger-than-bowl': 'A larger batch: {grams} g and more, but the bowl holds {bowl} g.',
  'way-premix':
    'A premix: {substance} g of {item} into {carrierGrams} g of {carrier}, {total} g in all. {portion} g of it bring the {dose} g; leave {brought} g out of the {carrier}.',
} as const;
