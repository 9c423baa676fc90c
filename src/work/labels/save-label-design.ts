import { labelLawOf } from '../../catalogue/index.ts';
import { labels, type orders } from '../../contract/index.ts';
import { done, type Problem, problem, refused } from '../../core/problem.ts';
import { exact } from '../../core/quantity/index.ts';
import {
  findAttachment,
  findLabelDesign,
  findLabelSheet,
  findProduct,
  giveUp,
  listProducts,
  listLabelDesigns as listRows,
  listRunsOfProduct,
  type Writer,
} from '../../storage/index.ts';
import { keepDetails } from '../keep-details.ts';
import { readProductDetails } from '../read-product-details.ts';
import { record, thingNotFound, viewId } from '../record.ts';
import { saying } from '../saying.ts';
import type { UseCase } from '../use-case.ts';
import { workshopDetails } from '../workshop-details.ts';
import { plainDesign, readLabelDesign } from './label-design.ts';

export const getLabelDesign: UseCase<'getLabelDesign'> = async (context, { params: { id = '' } }) => {
  const { db } = context.storage;
  const product = await findProduct(db, id);
  if (!product) return refused(thingNotFound('id', id));
  const details = readProductDetails(product.details);
  const row = await findLabelDesign(db, id);
  const [run] = await listRunsOfProduct(db, id);
  return done({
    productId: id,
    productName: product.name,
    markets: details.markets,
    version: row?.version ?? null,
    details: row ? readLabelDesign(row.details) : plainDesign(details),
    gtin: details.gtin,
    codeDomain: (await workshopDetails(context)).codeDomain,
    eMark: judgeChoice(details),
    lastRun: run ? { id: run.id, number: run.number } : null,
  });
};

/** Directive 76/211/EEC: a choice of whoever packs by the average system, within the contents that it is for. */
function judgeChoice({ declaredGrams, fillBasis, markets }: orders.ProductDetails) {
  const { from, upTo } = labelLawOf(markets.find((market) => market !== 'US') ?? 'GB').eMarkGrams;
  const grams = exact(declaredGrams);
  if (grams.lt(from) || grams.gt(upTo))
    return { isChoice: false, says: saying('label-e-mark-outside', { from, upTo }) };
  return fillBasis === 'average'
    ? { isChoice: true, says: saying('label-e-mark-choice') }
    : { isChoice: false, says: saying('label-e-mark-not-average') };
}

export const listLabelDesigns: UseCase<'listLabelDesigns'> = async ({ storage: { db } }) => {
  const designs = new Map((await listRows(db)).map((row) => [row.product_id, row.details]));
  const products = (await listProducts(db)).map((row) => ({
    id: row.id,
    details: readProductDetails(row.details),
  }));
  return done(
    products
      .filter(({ details }) => !details.isWithdrawn)
      .map(({ id, details }) => {
        const row = designs.get(id);
        const { pieces, leaflet } = row === undefined ? plainDesign(details) : readLabelDesign(row);
        return {
          productId: id,
          productName: details.name,
          isDesigned: row !== undefined,
          pieces: pieces.map(({ role }) => role),
          hasLeaflet: leaflet.moves !== 'none',
        };
      }),
  );
};

export const saveLabelDesign: UseCase<'saveLabelDesign'> = (context, { params: { id = '' }, body }) =>
  record(
    context,
    body.stamp,
    async (tx, tell) => {
      const product = (await findProduct(tx, id)) ?? giveUp(thingNotFound('id', id));
      const problems = [...judgeNames(body.details), ...(await judgeReferences(tx, body.details))];
      if (problems.length > 0) giveUp(...problems);
      await tell({
        kind: 'label-designed',
        subjectKind: 'label-design',
        subjectId: id,
        payload: body.details,
      });
      const { details, version: seen } = body;
      await keepDetails(tx, 'label_design', { productId: id, name: product.name, details, seen });
      return id;
    },
    viewId,
  );

function judgeNames({ pieces }: labels.LabelDesignDetails): Problem[] {
  const ids = pieces.map(({ id }) => id);
  return ids.flatMap((found, index) =>
    ids.indexOf(found) === index && found !== labels.LEAFLET
      ? []
      : [problem('label-piece-name-taken', `details.pieces[${index}].id`, { found })],
  );
}

/** Sheets and pictures that it names must be there. */
async function judgeReferences(tx: Writer, { pieces }: labels.LabelDesignDetails): Promise<Problem[]> {
  const problems: Problem[] = [];
  for (const [index, { sheetId, artwork }] of pieces.entries()) {
    const at = `details.pieces[${index}]`;
    if (sheetId !== null && !(await findLabelSheet(tx, sheetId)))
      problems.push(thingNotFound(`${at}.sheetId`, sheetId));
    if (artwork && !(await findAttachment(tx, artwork.attachmentId)))
      problems.push(thingNotFound(`${at}.artwork`, artwork.attachmentId));
  }
  return problems;
}
