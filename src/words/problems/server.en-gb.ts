/** What can be wrong with a request, its sender or the port. */
export const serverProblems = {
  'route-unknown': {
    says: 'There is nothing at {where} ({found}).',
    mend: 'Look at /api/openapi.json for what there is.',
  },
  'page-missing': { says: 'There is no file {where}.', mend: 'Load the page again.' },
  'pages-not-built': {
    says: 'The pages of the program are not there.',
    mend: 'Run npm run build in the folder of the program, then start it again.',
  },
  'calculation-unknown': {
    says: 'There is no calculation \u201c{found}\u201d.',
    mend: 'Choose one of: {allowed}.',
  },
  'body-too-large': {
    says: 'What was sent is too large; at most {allowed} MB are taken here.',
    mend: 'Send less, or a smaller file.',
  },
  'body-not-json': {
    says: 'What was sent says that it is \u201c{found}\u201d; only {allowed} is taken.',
    mend: 'Send JSON, with the header content-type: application/json.',
  },
  'json-broken': { says: 'What was sent is no JSON: {found}.', mend: 'Check brackets, commas and quotes.' },
  'host-foreign': {
    says: 'This request was meant for \u201c{found}\u201d, which is not this program.',
    mend: 'Open it by one of: {allowed}.',
  },
  'origin-foreign': {
    says: 'This request came from a page of \u201c{found}\u201d; only pages of this program are answered.',
    mend: 'Open the program itself at {allowed}.',
  },
  'our-mistake': {
    says: 'Something went wrong in the program itself. Nothing of this entry was saved, and nothing before it was lost.',
    mend: 'Try once more. If it happens again, please report it with what you did.',
  },
  'port-taken': {
    says: 'Port {found} is taken by another program, or by a Gramwright that is still running.',
    mend: 'Close the other one, or choose another port: gramwright start --port {allowed}.',
  },
  'port-not-allowed': {
    says: 'This user may not listen on port {found}.',
    mend: 'Choose a port above 1023, such as gramwright start --port 4716.',
  },
  'too-many-streams': {
    says: 'Too many pages are open at once: {allowed} are told of changes as they happen, and this one is not.',
    mend: 'Close pages that nobody looks at. This one still shows what is new whenever it is looked at again.',
  },
} as const;
