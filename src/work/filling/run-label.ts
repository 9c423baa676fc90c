import type { Market, orders, Saying } from '../../contract/index.ts';
import type { LabelElementName, LabelText } from '../../core/label/index.ts';
import { type FaceSize, type Label, layoutLabel } from '../../print/layout/index.ts';
import { say, sayProblem } from '../../words/index.ts';
import type { Context } from '../context.ts';
import { findMadeLookup } from '../making/made-lookup.ts';
import { painter } from '../painter.ts';
import { saying } from '../saying.ts';
import { findRunDurability } from './best-before.ts';
import { labelForProduct, sayReason } from './compose-label.ts';
import type { RunRecords } from './run-records.ts';

export interface RunLabel {
  readonly text: LabelText | null;
  /** What still keeps it from being printed for sale. */
  readonly missing: readonly Saying[];
  /** As it is drawn; what is missing stands there as three dots. */
  readonly label: Label | null;
}

/** The label of a run for one market, by what is in its tins, in words and as it is to be drawn. */
export async function composeRunLabel(
  context: Context,
  records: RunRecords,
  market: Market,
): Promise<RunLabel> {
  const { head, details } = records;
  const composed = await labelForProduct(context, {
    details,
    revisionId: head.revision_id,
    market,
    batchNumber: head.number,
    durability: await findRunDurability(context, records),
    made: await findMadeLookup(context.storage.db, head.batch_id),
  });
  if (!composed.ok) {
    const missing = composed.problems.map((each) => cannotBeSaid(sayProblem(each).says));
    return { text: null, missing, label: null };
  }
  const { text, house } = composed.value;
  const label = drawn(text, details, { brandName: house.name, isTrial: head.purpose === 'trial' });
  const { loadFaces } = await painter();
  const layout = layoutLabel(label, loadFaces());
  const tooTight = layout.ok ? [] : layout.problems.map((each) => doesNotFit(sayProblem(each).says));
  const rejected = head.verdict === 'rejected' ? [saying('label-run-rejected')] : [];
  return { text, missing: [...rejected, ...missingOf(text), ...tooTight], label };
}

const missingOf = (text: LabelText): Saying[] =>
  text.elements.flatMap(({ state, reason }) =>
    state === 'missing' && reason !== null ? [sayReason(reason)] : [],
  );

const cannotBeSaid = (reason: string): Saying => saying('label-not-to-be-said', { reason });
const doesNotFit = (reason: string): Saying => saying('label-does-not-fit', { reason });

const DOTS = '\u2026';

function drawn(
  text: LabelText,
  details: orders.ProductDetails,
  { brandName, isTrial }: { readonly brandName: string; readonly isTrial: boolean },
): Label {
  const of = (name: LabelElementName): string | undefined => {
    const element = text.elements.find((each) => each.element === name);
    if (!element || element.state === 'not-needed') return undefined;
    return element.text || DOTS;
  };
  const functionText = of('function');
  const durabilityText = of('minimum-durability');
  const precautionsText = of('precautions');
  const originText = of('country-of-origin');
  const contactText = of('contact');
  const otherLines = [
    ...(contactText === undefined ? [] : [contactText]),
    ...(isTrial ? [say(saying('label-trial-line'))] : []),
  ];
  const hasPeriod = of('period-after-opening') !== undefined && details.openedMonths !== null;
  return {
    front: {
      size: faceSize(details.faceMm),
      productName: details.name,
      brandName,
      ...(functionText !== undefined && { functionText }),
      declaredContentText: of('nominal-content') ?? DOTS,
      figureHeightMm: text.figureHeightMm,
    },
    back: {
      size: faceSize(details.backMm),
      ingredientsText: of('ingredients') ?? DOTS,
      batchNumber: of('batch-number') ?? DOTS,
      ...(durabilityText !== undefined && { durabilityText }),
      ...(hasPeriod && details.openedMonths !== null && { openedMonths: details.openedMonths }),
      ...(precautionsText !== undefined && { precautionsText }),
      responsiblePersonText: of('responsible-person') ?? DOTS,
      ...(originText !== undefined && { originText }),
      ...(otherLines.length > 0 && { otherLines }),
    },
  };
}

const faceSize = ({ shape, width, height }: orders.ProductDetails['faceMm']): FaceSize =>
  shape === 'round'
    ? { shape, diameterMm: Math.min(width, height) }
    : { shape, widthMm: width, heightMm: height };
