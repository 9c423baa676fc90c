import { done, problem, refused } from '../../core/problem.ts';
import { findProduct } from '../../storage/index.ts';
import { labelForProduct } from '../filling/index.ts';
import { listRevisionsInForce, openRevision } from '../formulas/index.ts';
import { designOf } from '../labels/label-design.ts';
import { readProductDetails } from '../read-product-details.ts';
import { thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewAnswers, viewIngredients } from './view-answers.ts';

/** As the product is made now: by the revision of its formula that is in force. */
export const getProductAnswers: UseCase<'getProductAnswers'> = async (context, { params: { id = '' } }) => {
  const { db } = context.storage;
  const product = await findProduct(db, id);
  if (!product) return refused(thingNotFound('id', id));
  const details = readProductDetails(product.details);
  const head = (await listRevisionsInForce(db)).find((row) => row.formula_id === details.formulaId);
  if (!head) return refused(problem('product-without-recipe', 'id', { found: details.name }));
  const opened = await openRevision(db, head.id);
  if (!opened.ok) return opened;
  const design = await designOf(db, id, details);
  const ingredients = [];
  for (const market of details.markets) {
    const asked = { details, revisionId: head.id, market, batchNumber: null, durability: null, design };
    const label = await labelForProduct(context, asked);
    ingredients.push(viewIngredients(market, label.ok ? label.value.text : null));
  }
  return done(
    viewAnswers({
      productId: id,
      productName: details.name,
      batchNumber: null,
      opened: opened.value,
      ingredients,
    }),
  );
};
