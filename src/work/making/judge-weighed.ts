import { type Checked, listOpened, listStops } from '../../check/index.ts';
import type { Market, Saying } from '../../contract/index.ts';
import type { Result } from '../../core/problem.ts';
import { say } from '../../words/index.ts';
import type { Context } from '../context.ts';
import { type LotLookup, runCheck } from '../formulas/index.ts';
import { saying } from '../saying.ts';
import { checkAsMade } from './check-as-made.ts';
import { findMadeLookup } from './made-lookup.ts';
import { readWeighedLookup, type WeighedIn } from './weighed-lookup.ts';

export interface WeighedBatch {
  readonly batchId: string;
  readonly revisionId: string;
  readonly markets: readonly Market[];
  /** The check of the formula with the lots of the batch, where it was run already. */
  readonly written?: Result<Checked>;
}

/** A weighing that is not written yet, where it is asked what the batch would be with it. */
export type JudgeWeighed = (proposed?: WeighedIn) => Promise<Saying | null>;

/**
 * What is wrong with a batch as it was weighed in, not as it was asked for: an addition far outside of its band may have
 * been explained and still be too much, too little for the report, enough to be named, or raise what nobody was asked. Bases count as they were
 * weighed themselves; what is not weighed in yet counts with its target. null: nothing is wrong.
 */
export const judgeWeighed = (context: Context, batch: WeighedBatch): Promise<Saying | null> =>
  openJudge(context, batch)();

/** The same for several amounts of one weighing: the formula itself is checked once. */
export function openJudge(
  context: Context,
  { batchId, revisionId, markets, written: known }: WeighedBatch,
): JudgeWeighed {
  let formula = known && Promise.resolve(known);
  return async (proposed) => {
    const lookup = await readWeighedLookup(context.storage.db, batchId, proposed);
    const weighed = await runCheck(context, revisionId, markets, { weighed: lookup });
    if (!weighed.ok) return saying('check-limits-not-known');
    const stops = listStops(weighed.value);
    if (stops.length > 0) return sayStops(stops);
    formula ??= checkWritten(context, { batchId, revisionId, markets }, lookup);
    const written = await formula;
    if (!written.ok) return saying('check-limits-not-known');
    const opened = listOpened(written.value, weighed.value);
    if (opened.length > 0)
      return saying('check-weighed-opened', { which: opened.map((one) => say(one)).join(' ') });
    const { which, markets: where } = findUnnamed(written.value, weighed.value);
    return which.length > 0
      ? saying('check-weighed-unnamed', { which: which.join(', '), markets: where.join(', ') })
      : null;
  };
}

/** Where no lot has a certificate, the label is by the formula itself. */
async function checkWritten(
  context: Context,
  { batchId, revisionId, markets }: WeighedBatch,
  { certified }: Required<LotLookup>,
): Promise<Result<Checked>> {
  if (certified.size === 0) return runCheck(context, revisionId, markets);
  return checkAsMade(context, revisionId, markets, await findMadeLookup(context.storage.db, batchId));
}

function sayStops(stops: readonly Saying[]): Saying {
  const which = stops.map((stop) => say(stop)).join(' ');
  return stops.every(({ code }) => code === 'sale-report-below')
    ? saying('check-weighed-below', { which })
    : saying('check-weighed-over', { which });
}

/**
 * The label names what the formula brings over a naming threshold. What only the weighing brought over it is missing
 * there; a name too many does no harm.
 */
function findUnnamed(written: Checked, weighed: Checked): { which: string[]; markets: Market[] } {
  const namesOf = ({ groups }: Checked) =>
    groups.flatMap(({ answer }) =>
      answer.markets.flatMap(({ market, naming }) =>
        naming.named.map(({ labelName }) => ({ market, labelName })),
      ),
    );
  const onLabel = new Set(namesOf(written).map(({ market, labelName }) => `${market} ${labelName}`));
  const left = namesOf(weighed).filter(({ market, labelName }) => !onLabel.has(`${market} ${labelName}`));
  return {
    which: [...new Set(left.map(({ labelName }) => labelName))],
    // The United States are no market of a product: the question was asked for its own markets only.
    markets: [...new Set(left.map(({ market }) => market as Market))],
  };
}
