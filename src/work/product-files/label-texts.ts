import type { Market, orders } from '../../contract/index.ts';
import { sayProblem } from '../../words/index.ts';
import type { Context } from '../context.ts';
import { labelForProduct } from '../filling/index.ts';

/** The words of the label in one market, element by element; what cannot be composed is said. */
export async function writeLabelText(
  context: Context,
  details: orders.ProductDetails,
  revisionId: string,
  market: Market,
): Promise<string> {
  const composed = await labelForProduct(context, {
    details,
    revisionId,
    market,
    batchNumber: null,
    durability: null,
  });
  if (!composed.ok) return composed.problems.map((each) => sayProblem(each).says).join('\n');
  return composed.value.text.elements
    .map(({ element, text, state }) => `${element}: ${state === 'there' ? text : `(${state}) ${text}`}`)
    .join('\n');
}
