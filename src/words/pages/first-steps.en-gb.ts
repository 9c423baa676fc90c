/** What a new workshop needs before its first batch: shown on the first page until all of it is there. */
export const firstStepWords = {
  title: 'First steps',
  count: (done: number, all: number) => `${done} of ${all} done`,
  done: 'done',
  next: 'next',
  toDo: 'to do',
  step: {
    people: { name: 'The people', why: 'Each entry carries a name.', act: 'To the people' },
    place: { name: 'The places', why: 'Where things stand: a shelf, a stall, a shop.', act: 'To the places' },
    scale: {
      name: 'The scales',
      why: 'How much each holds, and the smallest step it shows. Without one nothing can be weighed.',
      act: 'Add a scale',
    },
    address: {
      name: 'Your address',
      why: 'The responsible person, as the label has to name it.',
      act: 'Write it down',
    },
    material: {
      name: 'The materials',
      why: 'Butters, oils, scents, and the tins, lids and labels too.',
      act: 'Add a material',
    },
    count: {
      name: 'The opening count',
      why: 'Weigh each tub as it stands; count the tins.',
      act: 'Count the shelf',
    },
    formula: { name: 'The first formula', why: 'In grams, as you make it.', act: 'Write a formula' },
    report: {
      name: 'The safety report',
      why: 'What the assessor signed. Until then, batches are trials.',
      act: 'Enter the report',
    },
    product: {
      name: 'The first product',
      why: 'A formula in a tin, with what the label declares.',
      act: 'Add a product',
    },
    order: {
      name: 'The first order',
      why: 'It is answered at once: when it can go, what is short.',
      act: 'Enter an order',
    },
  },
} as const;
