/** What can be wrong with declared contents, fills and batches of packs. */
export const fillingProblems = {
  'no-tolerable-error': {
    says: '{where} is {found}; there is no tolerable error outside of {allowed} g or ml, where a pack holds at least what it declares.',
    mend: 'Judge it by the minimum way: no pack below the label.',
  },
  'batch-too-small-to-destroy': {
    says: 'A batch of {found} is too small for a test that opens the packs; that is for {allowed} packs and more.',
    mend: 'Weigh all packs of the batch instead.',
  },
  'samples-counted-wrong': {
    says: '{where} has {found, plural, one {# count} other {# counts}}; this plan wants {allowed}.',
    mend: 'Give one count for each sample that was taken.',
  },
  'more-counted-than-sampled': {
    says: '{where} is {found}, but the sample has only {allowed}.',
    mend: 'Count the packs below limit 1 within the sample.',
  },
  'weights-not-the-sample': {
    says: 'There {found, plural, one {is # weight} other {are # weights}}; a batch of {batchSize} is judged by {allowed}.',
    mend: 'Weigh as many packs, or correct the size of the batch.',
  },
  'whipped-not-lighter': {
    says: '{where} is {found}; whipped it cannot be heavier than unwhipped ({allowed}), nor weigh nothing.',
    mend: 'Check whether the two figures were swapped, and weigh the same volume both times.',
  },
  'tares-too-few': {
    says: 'Of {found, plural, =0 {no empty tins} one {# empty tin} other {# empty tins}} nobody can tell how they differ.',
    mend: 'Weigh {allowed} or more, ten as a rule.',
  },
  'weighed-nothing': {
    says: 'Full it weighs {allowed} g and empty {found} g: that leaves nothing in it.',
    mend: 'Look whether the two figures were swapped, or weigh again.',
  },
  'cup-lighter-before': {
    says: 'Before whipping the cup held {found} g and now it holds {allowed} g: whipping takes in nothing but air.',
    mend: 'Fill the same cup to its rim both times and take its own weight off; or leave the weight before whipping out.',
  },
  'inclusions-leave-no-base': {
    says: 'The inclusions add up to {found} of the finished mass, which leaves no base.',
    mend: 'Give shares of the finished mass that add up to less than {allowed}.',
  },
  'declared-does-not-fit': {
    says: 'The container holds at most {allowed} g even unwhipped, not {found} g, in the {volumeMl} ml that may be filled.',
    mend: 'Take a larger container, less headspace, or declare less.',
  },
  'retained-above-filled': {
    says: 'Of {allowed, plural, =0 {no filled packs} one {# filled pack} other {# filled packs}} {found} cannot be kept back.',
    mend: 'Make a larger batch, or keep fewer back.',
  },
  'wanted-not-whole': {
    says: '{where} is {found}, not a whole number from {allowed}.',
    mend: 'Give whole pieces.',
  },
  'share-out-of-range': {
    says: 'The share of {where} is {found}; it must be {allowed}.',
    mend: 'Give it as a share of the batch: 0.02 for 2 %.',
  },
  'no-tins-wanted': { says: 'No tins are wanted.', mend: 'Say how many tins of which product.' },
  'coverage-not-for-average': {
    says: 'A coverage of {found} was given, which the average way does not use.',
    mend: 'Leave it out, or take the minimum way.',
  },
  'one-pair-wanted': {
    says: 'Given was {found}; wanted is one pair: {allowed}.',
    mend: 'Give both figures of one pair and none of the other.',
  },
  'overrun-or-declared': {
    says: 'Either the overrun or the declared grams must be given, and not both.',
    mend: 'Give the overrun to learn the fill, or the declared grams to learn the largest overrun.',
  },
  'batch-or-units': {
    says: 'Either the grams of the batch or the units must be given; given was {found, select, both {both} other {neither}}.',
    mend: 'Give the batch to learn the units, or the units to learn the batch.',
  },
} as const;
