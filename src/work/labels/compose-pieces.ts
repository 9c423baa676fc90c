import type { labels, Saying } from '../../contract/index.ts';
import { isLacking, type LabelText } from '../../core/label/index.ts';
import type { Problem } from '../../core/problem.ts';
import { sayProblem } from '../../words/index.ts';
import type { Context } from '../context.ts';
import { type LabelFor, labelForProduct, sayReason } from '../filling/compose-label.ts';
import { saying } from '../saying.ts';
import { type LaidPiece, layOutPieces } from './lay-out-pieces.ts';
import { wordLabel } from './word-label.ts';

export interface ComposedPieces {
  readonly text: LabelText | null;
  /** What keeps it from being printed for sale. */
  readonly missing: readonly Saying[];
  readonly pieces: readonly LaidPiece[];
  /** What is wrong with the design as a whole. */
  readonly problems: readonly Problem[];
  /** Labels that do not fit on the sheet that they are to be printed on: they can be printed on another. */
  readonly sheetProblems: readonly Problem[];
}

export interface PiecesFor extends LabelFor {
  readonly design: labels.LabelDesignDetails;
  readonly isTrial: boolean;
}

/** The label of a product in one market: its words, judged, and each piece of it at true size. */
export async function composeLabelPieces(context: Context, asked: PiecesFor): Promise<ComposedPieces> {
  const { details, design, market, durability, isTrial } = asked;
  const composed = await labelForProduct(context, asked);
  if (!composed.ok) {
    const missing = composed.problems.map((each) => cannotBeSaid(sayProblem(each).says));
    return { text: null, missing, pieces: [], problems: [], sheetProblems: [] };
  }
  const { text, house } = composed.value;
  const { wording, lacking } = wordLabel({
    text,
    details,
    house,
    durability,
    isTrial,
    languages: design.languages,
  });
  const facts = { market, gtin: details.gtin, codeDomain: house.codeDomain };
  const laid = await layOutPieces(context.storage.db, design, facts, wording);
  const problems = [...lacking, ...laid.problems];
  const refusals = laid.pieces.flatMap(({ layout }) => (layout.ok ? [] : layout.problems));
  const wrong = [...problems, ...refusals].map((each) => doesNotFit(sayProblem(each).says));
  const { pieces, sheetProblems } = laid;
  return { text, missing: [...missingOf(text), ...wrong], pieces, problems, sheetProblems };
}

const missingOf = (text: LabelText): Saying[] =>
  text.elements.flatMap((each) => (isLacking(each) && each.reason !== null ? [sayReason(each.reason)] : []));

const cannotBeSaid = (reason: string): Saying => saying('label-not-to-be-said', { reason });
const doesNotFit = (reason: string): Saying => saying('label-does-not-fit', { reason });
