/** Longer than any line of a scale: what has no end by then is noise of a wrong speed (common practice, no source). */
const LONGEST = 200;

/** Puts pieces of text together and gives out whole lines, whichever of CR, LF and both end them. */
export function makeLineSplitter(onLine: (line: string) => void): (piece: string) => void {
  let begun = '';
  return (piece) => {
    const parts = (begun + piece).split(/[\r\n]+/);
    begun = (parts.pop() ?? '').slice(-LONGEST);
    for (const line of parts) if (line.trim() !== '') onLine(line);
  };
}
