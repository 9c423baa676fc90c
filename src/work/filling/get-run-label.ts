import { done, refused } from '../../core/problem.ts';
import { labelToSvg, layoutLabel } from '../../print/layout/index.ts';
import { painter } from '../painter.ts';
import { thingNotFound } from '../record.ts';
import type { UseCase } from '../use-case.ts';
import { viewElement } from './compose-label.ts';
import { composeRunLabel } from './run-label.ts';
import { gatherRun } from './run-records.ts';

/** The label, element by element, with both faces drawn at true size as far as there is something to draw. */
export const getRunLabel: UseCase<'getRunLabel'> = async (context, { params: { id = '' }, query }) => {
  const records = await gatherRun(context.storage.db, id);
  if (!records) return refused(thingNotFound('id', id));
  const { text, missing, label } = await composeRunLabel(context, records, query.market);
  const { loadFaces } = await painter();
  const layout = label && layoutLabel(label, loadFaces());
  const svg = layout?.ok ? labelToSvg(layout.value) : { front: '', back: '' };
  return done({
    market: query.market,
    elements: text ? text.elements.map(viewElement) : [],
    missing: [...missing],
    figureHeightMm: text?.figureHeightMm ?? 0,
    frontSvg: svg.front,
    backSvg: svg.back,
  });
};
