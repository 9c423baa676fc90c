import { netContentsTables } from '../../catalogue/index.ts';
import type { LabelLaw } from '../../core/label/index.ts';
import { labelRules } from '../../reference/index.ts';

function ruleOf(id: string) {
  const rule = labelRules.find((row) => row.id === id);
  if (!rule) throw new Error(`the label rules lack the row ${id}`);
  return rule;
}

function given<Value>(value: Value | undefined, what: string): Value {
  if (value === undefined) throw new Error(`the label rules lack ${what}`);
  return value;
}

const ARTICLE_19 = 'Regulation (EC) No 1223/2009, Article 19(1)';

/** Months up to and with which a date must stand on the label. */
export const DURABILITY_THRESHOLD_MONTHS = given(ruleOf('pao').thresholdMonths, 'the months of the open jar');

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
  order: {
    thresholdPercent: given(
      ruleOf('ingredient-order').thresholdPercent,
      'the share below which order is free',
    ),
    freeWhen: given(ruleOf('ingredient-order').freeWhen, 'when the order is free'),
  },
  figureHeights: netContentsTables.figureHeights,
  // "Less than 5 g or 5 ml" is exempt (Article 19(1)(b)): the row nominal-content names it in words.
  contentFromGrams: 5,
  euAddressInGbUntil: given(ruleOf('rp-gb').until, 'the day until which the other address will do'),
};
