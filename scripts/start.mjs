// npm start: from a fresh clone to the example workshop, with plain Node and nothing installed yet.
import { checkNode, installPackages, isBuildStale, root, runs } from './prepare.mjs';

checkNode();
if (!installPackages()) process.exit(1);
if (isBuildStale()) {
  console.log('Building ...');
  if (!runs('npm', ['run', '--silent', 'build'])) process.exit(1);
}

const given = process.argv.slice(2);
const isOwnFolder = given.some((argument) => argument === '--folder' || argument.startsWith('--folder='));
// A folder of one's own is never filled with the example unasked.
const example = isOwnFolder ? [] : ['--example', '--folder', `${root}/workshop-data/example`];
process.argv.splice(2, Number.POSITIVE_INFINITY, 'start', ...example, ...given);
await import(new URL('../bin/gramwright', import.meta.url));
