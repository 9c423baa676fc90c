import { ingredientOrder, netContentsTables } from '../../catalogue/index.ts';
import type { LabelLaw } from '../../core/label/index.ts';
import { labelRules } from '../../reference/index.ts';

/** Until when Great Britain takes a label with the other responsible person alone: row rp-gb of the label rules. */
function addressTakenUntil(): string {
  const until = labelRules.find((row) => row.id === 'rp-gb')?.until;
  if (until === undefined)
    throw new Error('the label rules lack the day until which the other address will do');
  return until;
}

const ARTICLE_19 = 'Regulation (EC) No 1223/2009, Article 19(1)';

/** The published label rules, bound for core/label: Great Britain, Northern Ireland and the European Union. */
export const labelLaw: LabelLaw = {
  sources: {
    'product-name': 'common practice, no source',
    function: `${ARTICLE_19}(f)`,
    'nominal-content': `${ARTICLE_19}(b); Directive 76/211/EEC, Annex I 3.1`,
    ingredients: `${ARTICLE_19}(g)`,
    'minimum-durability': `${ARTICLE_19}(c)`,
    'period-after-opening': `${ARTICLE_19}(c)`,
    precautions: `${ARTICLE_19}(d)`,
    'batch-number': `${ARTICLE_19}(e)`,
    'responsible-person': `${ARTICLE_19}(a)`,
    'country-of-origin': `${ARTICLE_19}(a)`,
  },
  // One rule for all three: the table names EU, NI and GB together.
  order: ingredientOrder('EU'),
  figureHeights: netContentsTables.figureHeights,
  // "Less than 5 g or 5 ml" is exempt (Article 19(1)(b)): the row nominal-content names it in words.
  contentFromGrams: 5,
  euAddressInGbUntil: addressTakenUntil(),
};
