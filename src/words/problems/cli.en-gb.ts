/** What can be wrong with a command. */
export const cliProblems = {
  'input-missing': {
    says: 'The calculation was given nothing.',
    mend: 'Give its fields as JSON, as an argument or on standard input; gramwright calc --help NAME shows them.',
  },
  'port-wrong': {
    says: '\u201c{found}\u201d is no port.',
    mend: 'Give a whole number from 0 to 65535, such as {allowed}.',
  },
  'network-port-wrong': {
    says: '\u201c{found}\u201d is no port for the network.',
    mend: 'Give a whole number from 1024 to 65535, such as 4443.',
  },
  'export-kind-missing': {
    says: 'It was not said how to write everything down.',
    mend: 'Choose one: gramwright export --json, or gramwright export --csv.',
  },
  'export-not-written': {
    says: '{where} was not written ({found}).',
    mend: 'Choose another place with --to; a file that is there already is never overwritten.',
  },
  'server-silent': {
    says: 'The Gramwright that has the file open should answer at {where}, and does not.',
    mend: 'Close it, then try again.',
  },
} as const;
