/** The batch's own number for its first run, then the number with a letter: B, C ... Z, AA, AB ... */
export const runNumber = (batchNumber: string, runsBefore: number): string =>
  runsBefore === 0 ? batchNumber : `${batchNumber}${lettersOf(runsBefore + 1)}`;

/** 1 is A, 26 is Z, 27 is AA. */
function lettersOf(count: number): string {
  let rest = count;
  let letters = '';
  while (rest > 0) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
    rest = Math.floor((rest - 1) / 26);
  }
  return letters;
}
