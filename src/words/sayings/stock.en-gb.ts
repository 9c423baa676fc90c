/** What the shelf and its lots say. */
export const stockSayings = {
  'known-from-memory': 'from memory, check',
  'single-figure': 'a single figure, its range is not known',
  'movement-for-order': 'order {number}',
  'movement-for-run': 'filling run {number}',
  'movement-for-batch': 'batch {number}',
} as const;
