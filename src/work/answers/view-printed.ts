import type { Market } from '../../contract/index.ts';
import type { SignedLabelPrint } from '../../storage/index.ts';
import type { Context } from '../context.ts';
import type { RunRecords } from '../filling/run-records.ts';
import { type ComposedPieces, findOutdatedPrints, readPrintedDesign } from '../labels/index.ts';
import type { AnswersView } from './view-answers.ts';
import { viewIngredients } from './view-answers.ts';

type Ingredients = AnswersView['ingredients'][number];

interface Asked {
  readonly records: RunRecords;
  readonly market: Market;
  readonly composed: ComposedPieces;
  /** Of this run, the newest first. */
  readonly prints: readonly SignedLabelPrint[];
}

/**
 * What stands on the tins in somebody's hand: papers that came since may have changed the list, and a name that the label
 * says is not to be lost from the answer.
 */
export async function viewPrinted(context: Context, asked: Asked): Promise<Ingredients> {
  const { market, composed } = asked;
  const today = viewIngredients(market, composed.text);
  const own = asked.prints.filter((print) => print.market === market && mayCarryList(print, composed));
  const kept = own
    .map((print) => ({ at: print.happened_at, list: readPrintedDesign(print.design).ingredients }))
    .find(({ list }) => list !== undefined);
  if (kept?.list !== undefined) return asPrinted(today, kept.at, kept.list);
  const [last] = own;
  if (!last) return today;
  const { records } = asked;
  const others = await findOutdatedPrints(context, { records, market, pieces: composed.pieces }, own);
  const is = others.length > 0 ? 'not-kept' : 'same';
  return { ...today, printed: { at: last.happened_at, is, now: today.text, onlyOnLabel: [], onlyNow: [] } };
}

/** Of a piece that the design has no more nobody knows what stood on it. */
const mayCarryList = ({ design }: SignedLabelPrint, { pieces }: ComposedPieces): boolean =>
  readPrintedDesign(design).pieces.some(({ id }) => {
    const known = pieces.find(({ piece }) => piece.id === id);
    return !known || known.piece.texts.some(({ element }) => element === 'ingredients');
  });

function asPrinted(today: Ingredients, at: string, list: string): Ingredients {
  const [then, now] = [namesOf(list), namesOf(today.text)];
  const printed = {
    at,
    is: list === today.text ? ('same' as const) : ('other' as const),
    now: today.text,
    onlyOnLabel: then.filter((name) => !now.includes(name)),
    onlyNow: now.filter((name) => !then.includes(name)),
  };
  return { ...today, text: list, missing: null, printed };
}

const namesOf = (list: string): string[] => (list === '' ? [] : list.split(', '));
