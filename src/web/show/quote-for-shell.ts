/** A path as one word of a command line: POSIX shells take what stands in single quotes as it is, Windows in double ones. */
export function quoteForShell(path: string): string {
  if (/^[\w./~:@%+-]+$/.test(path)) return path;
  return path.includes('\\') ? `"${path}"` : `'${path.replaceAll("'", "'\\''")}'`;
}
