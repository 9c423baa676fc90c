/** What the command line says of itself. Problems and sayings stand in their own files. */

const size = (bytes: number): string =>
  bytes < 100_000 ? `${Math.ceil(bytes / 1000)} kB` : `${(bytes / 1_000_000).toFixed(1)} MB`;

export const cliWords = {
  /** Any port above 1023 that nothing well known uses. */
  usualPort: '4716',
  about:
    'From an order to safe, labelled, traceable tins. Runs on this computer, keeps one file, sends nothing out.',
  commands: {
    start: 'open the workshop and answer on this computer',
    calc: 'run one calculation of the catalogue; without a name, list them',
    backup: 'write a backup now',
    restore: 'put a backup in the place of the workshop file; the present one is kept aside',
    checkUp: 'look the workshop file through: pages, chain of entries, balances',
    export: 'write everything down as JSON, or as CSV tables in a zip file',
  },
  options: {
    folder: "the workshop's folder (default: GRAMWRIGHT_FOLDER, or Gramwright in the home folder)",
    port: 'where to listen on this computer; 0 takes any free port',
    example: 'fill an empty workshop with the example',
    network:
      'let tablets and phones reach it over the workshop’s own network too (kept until it is turned off)',
    networkPort: 'where to listen for them; the devices know the workshop by it',
    name: 'name of the calculation',
    input: 'its input as JSON; - or nothing reads standard input',
    calcHelp: 'fields with units, equation, sources and an example',
    to: 'folder for the backup (default: as chosen in the workshop)',
    file: 'the backup',
    json: 'as one JSON document',
    csv: 'as one CSV file a table, in a zip file',
    exportTo: 'file to write (default: a dated name in this folder)',
  },
  started: (address: string, file: string) =>
    `Gramwright answers at ${address}\nThe workshop file is ${file}`,
  reached: (urls: readonly string[]) =>
    urls.length === 0
      ? 'Its network is on, but this computer has no address on a private network now.'
      : `Tablets and phones that are paired reach it at\n${urls.map((url) => `  ${url}`).join('\n')}`,
  closed: 'Closed.',
  backedUp: (file: string, bytes: number) => `Backup written and looked through: ${file} (${size(bytes)})`,
  restored: (file: string, keptAside: string | null) =>
    `Restored: ${file}. PINs for tablets and phones are set anew.${keptAside === null ? '' : `\nThe file that stood there is kept as ${keptAside}`}`,
  finding: (what: string, isSound: boolean, detail: string) =>
    `${isSound ? 'sound' : 'WRONG'}  ${what}. ${detail}`,
  exported: (file: string, bytes: number) => `Written: ${file} (${size(bytes)})`,
  calculation: {
    equation: 'Equation',
    validRange: 'Holds for',
    sources: 'Sources',
    input: 'Input',
    output: 'Output',
    example: 'Example',
    optional: 'may be left out',
    fromMemory: 'from memory, check',
  },
  problem: (says: string, mend: string) => `${says}\n${mend}`,
} as const;
