/** What can be wrong with lots that are to be issued, traced or promised. */
export const stockProblems = {
  'lot-listed-twice': {
    says: 'The lot {found} is listed twice.',
    mend: 'List each lot once, with all of it that there is.',
  },
} as const;
