import type { labels, Market } from '../../contract/index.ts';
import type { SignedLabelPrint } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import type { RunRecords } from '../filling/run-records.ts';
import { hashWords } from './hash-words.ts';
import type { LaidPiece } from './lay-out-pieces.ts';
import { readPrintedDesign } from './printed-design.ts';
import { composeRunLabel } from './run-label.ts';

type PrintedPiece = labels.PrintedDesign['pieces'][number] & { readonly at: string };

/**
 * Labels whose last print for this market says something else than they say today: a paper of a lot, an address, a wording
 * changed since. A law that began since does not count here: it has days of its own for what was labelled before. A piece that
 * the design has no more counts only while nothing of the design of today is printed.
 */
export async function findOutdatedPrints(
  context: Context,
  { records, market, pieces }: { records: RunRecords; market: Market; pieces: readonly LaidPiece[] },
  prints: readonly SignedLabelPrint[],
): Promise<PrintedPiece[]> {
  const last = lastPrinted(prints, market);
  const known = last.filter(({ id }) => pieces.some(({ piece }) => piece.id === id));
  if (known.length === 0) return last;
  const outdated: PrintedPiece[] = [];
  for (const printed of known.filter((each) => !isSaid(each, pieces))) {
    const then = await composeRunLabel(onDayOf(context, printed.at), records, market);
    if (!isSaid(printed, then.pieces)) outdated.push(printed);
  }
  return outdated;
}

const isSaid = ({ id, words }: PrintedPiece, pieces: readonly LaidPiece[]): boolean =>
  pieces.some(({ piece }) => piece.id === id && words === hashWords(piece));

/** By the law of that day; everything else as it is known now. */
const onDayOf = (context: Context, at: string): Context => ({
  ...context,
  machine: { ...context.machine, now: () => at },
});

function lastPrinted(prints: readonly SignedLabelPrint[], market: Market): PrintedPiece[] {
  const newestFirst = prints
    .filter((print) => print.market === market)
    .flatMap(({ design, happened_at }) =>
      readPrintedDesign(design).pieces.map((piece) => ({ ...piece, at: happened_at })),
    );
  return [...new Map([...newestFirst].reverse().map((piece) => [piece.id, piece])).values()];
}
