import type { Market, Saying } from '../../contract/index.ts';
import type { Context } from '../context.ts';
import { type Checked, runCheck } from '../formulas/index.ts';
import { saying } from '../saying.ts';
import { readWeighedLookup, type WeighedIn } from './weighed-lookup.ts';

export interface WeighedBatch {
  readonly batchId: string;
  readonly revisionId: string;
  readonly markets: readonly Market[];
  /** A weighing that is not written yet: what the batch would be with it. */
  readonly proposed?: WeighedIn;
}

const IS_OVER: ReadonlySet<string> = new Set(['over', 'prohibited', 'supplier-over', 'report-over']);

/**
 * What is wrong with a batch as it was weighed in, not as it was asked for: an addition far outside of its band may have
 * been explained and still be too much, or enough to be named. Bases count as they were weighed themselves; what is not
 * weighed in yet counts with its target. null: nothing is wrong.
 */
export async function judgeWeighed(context: Context, batch: WeighedBatch): Promise<Saying | null> {
  const { batchId, revisionId, markets, proposed } = batch;
  const lookup = await readWeighedLookup(context.storage.db, batchId, proposed);
  const weighed = await runCheck(context, revisionId, markets, lookup);
  if (!weighed.ok) return saying('check-limits-not-known');
  const over = weighed.value.groups.flatMap(({ answer }) =>
    answer.reasons.filter((reason) => IS_OVER.has(reason.kind)).map((reason) => reason.substance ?? ''),
  );
  if (over.length > 0) return saying('check-weighed-over', { which: [...new Set(over)].join(', ') });
  const written = await runCheck(context, revisionId, markets);
  if (!written.ok) return saying('check-limits-not-known');
  const { which, markets: where } = findUnnamed(written.value, weighed.value);
  return which.length > 0
    ? saying('check-weighed-unnamed', { which: which.join(', '), markets: where.join(', ') })
    : null;
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
