import { type CertifiedLot, judgeSale, type SignedDecision } from '../../check/index.ts';
import { type Market, type Saying, saying } from '../../contract/index.ts';
import { expandFormula } from '../../core/formula/index.ts';
import { listLotsAtHand, type Reader } from '../../storage/index.ts';
import { say } from '../../words/index.ts';
import { eitherOf } from '../certificates/either-of.ts';
import { readCounting } from '../certificates/read-counting.ts';
import type { Context } from '../context.ts';
import { workshopToday } from '../local-date.ts';
import { isUsable } from '../lot-use.ts';
import { readFormulaLookup } from './formula-lookup.ts';
import { runCheck } from './run-check.ts';

/**
 * The formula with the lots on the shelf: of each material of which every usable lot has a certificate, whichever of
 * them is taken (least of the leasts, most of the mosts). null: there is no such material.
 */
export async function checkShelf(
  context: Context,
  revisionId: string,
  markets: readonly Market[],
  decisions: readonly SignedDecision[],
): Promise<Saying | null> {
  const { db } = context.storage;
  const all = await readCounting(db);
  if (all.size === 0) return null;
  const lookup = await readFormulaLookup(db, { revisionId });
  const expanded = expandFormula(revisionId, lookup);
  if (!expanded.ok) return null;
  const ids = expanded.value.materials.map(({ materialId }) => materialId);
  const certified = await readShelf(db, ids, all, await workshopToday(context));
  if (certified.size === 0) return null;
  const checked = await runCheck(context, revisionId, markets, { ...lookup, certified }, decisions);
  if (!checked.ok) return null;
  const { answer, reasons } = judgeSale(checked.value);
  const standing = reasons.filter(({ blocks }) => blocks !== 'no');
  const materials = [...certified.keys()]
    .map((id) => checked.value.opened.materials.get(id)?.name ?? '')
    .join(', ');
  if (answer === 'yes') return saying('shelf-yes', { materials });
  return answer === 'decide'
    ? saying('shelf-decide', { materials, n: standing.length })
    : saying('shelf-no', {
        materials,
        which: standing
          .filter(({ blocks }) => blocks === 'yes')
          .map(({ says }) => say(says))
          .join(' '),
      });
}

async function readShelf(
  db: Reader,
  materialIds: readonly string[],
  all: ReadonlyMap<string, CertifiedLot>,
  day: string,
): Promise<Map<string, CertifiedLot>> {
  const asked = materialIds.filter((id) => [...all.values()].some((lot) => lot.materialId === id));
  const lots = (await listLotsAtHand(db, { itemIds: asked })).filter(
    (lot) => lot.on_hand > 0 && isUsable(lot, day, 'sale'),
  );
  const shelf = new Map<string, CertifiedLot>();
  for (const id of asked) {
    const own = lots.filter((lot) => lot.item_id === id);
    const papers = own.flatMap((lot) => all.get(lot.id) ?? []);
    const [first] = papers;
    if (first && papers.length === own.length) shelf.set(id, papers.slice(1).reduce(eitherOf, first));
  }
  return shelf;
}
