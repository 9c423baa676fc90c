import { labelLawOf, saleCountries } from '../../catalogue/index.ts';
import { type Checked, listIngredients, listWarnings } from '../../check/index.ts';
import type { labels, Market, orders, Saying } from '../../contract/index.ts';
import type { FormulaLookup } from '../../core/formula/index.ts';
import {
  composeLabelText,
  type Durability,
  type LabelElement,
  type LabelQuestion,
  type LabelText,
  type Panel,
  placeOfAddress,
  usPanelAreaMm2,
} from '../../core/label/index.ts';
import { done, type Result } from '../../core/problem.ts';
import type { Context } from '../context.ts';
import { runCheck } from '../formulas/index.ts';
import { localDate } from '../local-date.ts';
import { type WorkshopDetails, workshopDetails } from '../workshop-details.ts';

/** What a label is asked for: a product, by which revision it is made, and what is known of its run. */
export interface LabelFor {
  readonly details: orders.ProductDetails;
  readonly revisionId: string;
  readonly market: Market;
  /** null: not filled yet. */
  readonly batchNumber: string | null;
  readonly durability: Durability | null;
  /** What the run's batch was made of, where that is another composition than the formula's today. */
  readonly made?: FormulaLookup | undefined;
  /** What its labels print, and promise by themselves. */
  readonly design: Pick<labels.LabelDesignDetails, 'pieces' | 'languages' | 'hasEMark' | 'durabilitySign'>;
}

export interface ComposedLabel {
  readonly text: LabelText;
  readonly house: WorkshopDetails;
}

/**
 * The words of a product's label for one market: ingredients of the formula with its bases opened (for a run as they
 * were made), the allergens that
 * this market has named as of today, the workshop's responsible person for it.
 */
export async function labelForProduct(context: Context, asked: LabelFor): Promise<Result<ComposedLabel>> {
  const house = await workshopDetails(context);
  const checked = await runCheck(context, asked.revisionId, [asked.market], {
    ...(asked.made && { weighed: asked.made }),
  });
  if (!checked.ok) return checked;
  const placedOn = localDate(context.machine.now(), house.timeZone);
  const text = composeLabelText(questionOf(asked, house, checked.value, placedOn), labelLawOf(asked.market));
  return text.ok ? done({ text: text.value, house }) : text;
}

function questionOf(
  { details, market, batchNumber, durability, design }: LabelFor,
  house: WorkshopDetails,
  checked: Checked,
  placedOn: string,
): LabelQuestion {
  const verdicts = checked.groups.flatMap(({ answer }) => answer.markets);
  return {
    market,
    placedOn,
    productName: details.name,
    functionText: details.functionText,
    declaredGrams: details.declaredGrams,
    panelSquareMm: usPanelAreaMm2(panelOf(details, design)),
    fillBasis: details.fillBasis,
    ingredients: listIngredients(checked.opened, market),
    isScentTogether: details.scentOnLabel === 'parfum',
    allergens: {
      named: verdicts.flatMap(({ naming }) => naming.named.map((row) => row.labelName)),
      undecided: verdicts.flatMap(({ naming }) =>
        naming.unknown.filter((row) => !row.decision?.isAccepted).map((row) => row.name),
      ),
    },
    batchNumber,
    durability: durability && { ...durability, openedMonths: details.openedMonths },
    noOpenedPeriod: details.noOpenedPeriod === '' ? null : details.noOpenedPeriod,
    precautions: {
      text: details.precautions,
      required: listWarnings(checked),
    },
    isSafetySubstantiated: checked.groups.every(({ report }) => report !== undefined),
    responsible: responsibleFor(house, market),
    madeIn: {
      country: house.country,
      isNorthernIreland: placeOfAddress(house.responsibleGb.address) === 'NI',
    },
    saleCountries: saleCountries.filter(({ country }) => details.saleCountries.includes(country)),
    printedIn: design.languages,
    hasEMark: design.hasEMark,
    durabilitySign: design.durabilitySign,
  };
}

/** What the buyer sees first: the front or the whole label, else the face of the tin. */
function panelOf({ faceMm }: orders.ProductDetails, design: LabelFor['design']): Panel {
  const surface = design.pieces.find(({ role }) => role === 'front' || role === 'whole')?.surface;
  const { width: widthMm, height: heightMm } = faceMm;
  if (surface !== undefined) return surface;
  return faceMm.shape === 'round'
    ? { shape: 'round', diameterMm: Math.min(widthMm, heightMm) }
    : { shape: 'rectangle', widthMm, heightMm };
}

function responsibleFor(house: WorkshopDetails, market: Market): LabelQuestion['responsible'] {
  if (market === 'US') return house.responsibleUs;
  return market === 'GB' ? house.responsibleGb : house.responsibleEu;
}

/** An element as a page shows it. */
export const viewElement = ({ sign: _, reason, ...element }: LabelElement) => ({
  ...element,
  reason: reason && sayReason(reason),
});

export const sayReason = (reason: NonNullable<LabelElement['reason']>): Saying => ({
  code: reason.code,
  parameters: { ...reason.parameters },
});
