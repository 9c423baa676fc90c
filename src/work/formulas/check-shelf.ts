import { type CertifiedLot, judgeSale, type RevisionCheck, type SignedDecision } from '../../check/index.ts';
import { type Market, saying } from '../../contract/index.ts';
import { expandFormula, type FormulaLookup } from '../../core/formula/index.ts';
import { type LotAtHand, listLotsAtHand } from '../../storage/index.ts';
import { say } from '../../words/index.ts';
import { readCounting } from '../certificates/read-counting.ts';
import type { Context } from '../context.ts';
import { workshopToday } from '../local-date.ts';
import { isUsable } from '../lot-use.ts';
import { readFormulaLookup } from './formula-lookup.ts';
import { runCheck } from './run-check.ts';

const CODES = { yes: 'shelf-yes', no: 'shelf-no', decide: 'shelf-decide' } as const;

type ShelfAnswer = RevisionCheck['shelf'][number];

/** Material id: the lot of it that is taken; without a certificate it counts as its material. */
type Pick = ReadonlyMap<string, CertifiedLot>;

interface Asked {
  readonly revisionId: string;
  readonly markets: readonly Market[];
  readonly decisions: readonly SignedDecision[];
}

/**
 * The formula with the lots on the shelf that have a certificate: first with those that are next to be used, then with
 * each other one in its material's place. Empty: none has one.
 */
export async function checkShelf(context: Context, asked: Asked): Promise<ShelfAnswer[]> {
  const { db } = context.storage;
  const certified = await readCounting(db);
  const lookup = await readFormulaLookup(db, asked);
  const expanded = certified.size === 0 ? undefined : expandFormula(asked.revisionId, lookup);
  if (!expanded?.ok) return [];
  const itemIds = expanded.value.materials.map(({ materialId }) => materialId);
  const today = await workshopToday(context);
  const usable = (await listLotsAtHand(db, { itemIds }))
    .filter((lot) => lot.on_hand > 0 && isUsable(lot, today, 'sale'))
    .sort(compareDays);
  const answers: ShelfAnswer[] = [];
  for (const pick of listPicks(usable, certified)) {
    const answer = await answerPick(context, asked, lookup, pick);
    if (answer) answers.push(answer);
  }
  return answers;
}

/** First expired, first out; what nobody knows to end comes last. */
const compareDays = (one: LotAtHand, other: LotAtHand): number =>
  (one.best_before ?? '9999').localeCompare(other.best_before ?? '9999') ||
  one.since.localeCompare(other.since);

function listPicks(usable: readonly LotAtHand[], certified: ReadonlyMap<string, CertifiedLot>): Pick[] {
  const firstOf = new Map([...usable].reverse().map((lot) => [lot.item_id, lot.id]));
  const papers = usable.flatMap((lot) => certified.get(lot.id) ?? []);
  const next = new Map(
    papers.filter((lot) => firstOf.get(lot.materialId) === lot.lotId).map((lot) => [lot.materialId, lot]),
  );
  const others = papers.filter((lot) => next.get(lot.materialId) !== lot);
  return [
    ...(next.size > 0 ? [next] : []),
    ...others.map((lot) => new Map([...next, [lot.materialId, lot] as const])),
  ];
}

async function answerPick(
  context: Context,
  { revisionId, markets, decisions }: Asked,
  lookup: FormulaLookup,
  pick: Pick,
): Promise<ShelfAnswer | undefined> {
  const checked = await runCheck(context, revisionId, markets, {
    weighed: { ...lookup, certified: pick },
    decisions,
  });
  if (!checked.ok) return undefined;
  const { answer, reasons } = judgeSale(checked.value);
  const names = checked.value.opened.materials;
  return {
    answer,
    says: saying(CODES[answer], {
      n: pick.size,
      lots: [...pick].map(([id, lot]) => `${lot.lotNumber} (${names.get(id)?.name ?? ''})`).join(', '),
      which: reasons
        .filter(({ blocks }) => blocks === (answer === 'no' ? 'yes' : 'until-decided'))
        .map(({ says }) => say(says))
        .join(' '),
    }),
  };
}
