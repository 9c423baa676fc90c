import { run } from './run.ts';

// For development: the command line from its sources. bin/gramwright runs the built one.
process.exitCode = await run(process.argv.slice(2));
