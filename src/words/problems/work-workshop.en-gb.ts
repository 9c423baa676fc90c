/** What can be wrong when a workshop begins, or its people, scales and places change. */
export const workWorkshopProblems = {
  'workshop-already-begun': {
    says: 'This workshop has begun already. Nothing was changed.',
    mend: 'Go on with it, or give another folder for another workshop.',
  },
  'workshop-not-begun': {
    says: 'There is no workshop here yet.',
    mend: 'Start your own, or open the example, on the first page.',
  },
  'example-not-here': {
    says: 'The example workshop did not come with this program.',
    mend: 'Start your own workshop.',
  },
  'time-zone-unknown': {
    says: '{where} is “{found}”, which no calendar knows.',
    mend: 'Give it by continent and city, such as Europe/London.',
  },
  'person-name-taken': {
    says: 'Somebody called {found} works here already, and each decision is signed by name.',
    mend: 'Add a second name or an initial.',
  },
  'last-person': {
    says: '{name} is the last person here; without anybody, nothing could be signed any more.',
    mend: 'Add the other person first.',
  },
  'readability-above-capacity': {
    says: 'The smallest step that the scale shows ({found} g) is more than it can carry ({allowed} g).',
    mend: 'Look at the plate on the scale: Max is what it carries, d is the smallest step.',
  },
  'interval-below-readability': {
    says: 'The verification interval e ({found} g) is finer than what the scale shows, d ({allowed} g).',
    mend: 'Look at the plate on the scale: e is the same as d, or coarser. Leave it empty where the plate has no e.',
  },
  'scale-name-taken': {
    says: 'There is a scale called {found} already, and the weighing sheet names scales.',
    mend: 'Give this one another name.',
  },
  'place-name-taken': {
    says: 'There is a place called {found} already.',
    mend: 'Give this one another name.',
  },
} as const;
