import { z } from 'zod';
import { done, problem, type Result, refused } from '../core/problem.ts';
import { findExposureMgPerKgDay, judgeMarginOfSafety } from '../core/safety/index.ts';
import { exposureParameters, exposureProductTypes } from '../reference/index.ts';
import { defineCalculation } from './define-calculation.ts';
import { asNumber } from './measured-fields.ts';
import { rowById } from './row-by-id.ts';

const percent = (meaning: string) => z.number().min(0).max(100).describe(meaning);
/** A kilogram a day and kilogram of body weight: no product and no dose comes near it (common practice, no source). */
const LARGEST_MG_PER_KG_DAY = 1_000_000;
const mgPerKgDay = (meaning: string) => z.number().gt(0).max(LARGEST_MG_PER_KG_DAY).describe(meaning);

const ids = exposureProductTypes.map(({ id }) => id) as [string, ...string[]];

const input = z.strictObject({
  productType: z
    .enum(ids)
    .optional()
    .describe('Row of the exposure table; instead of relativeExposureMgPerKgDay'),
  relativeExposureMgPerKgDay: mgPerKgDay(
    'mg of product per kg of body weight and day, after the retention factor; instead of productType',
  ).optional(),
  percent: percent('Content of the substance, percent by mass of the product'),
  absorptionPercent: percent('Percent of it that enters the body'),
  pointOfDepartureMgPerKgDay: mgPerKgDay(
    'NOAEL, BMDL or the like, mg per kg of body weight and day',
  ).optional(),
  bioavailabilityPercent: percent(
    'Percent of an oral dose that enters the body; 100 where the point of departure is systemic',
  ).default(100),
});

interface ProductExposure {
  readonly relativeExposureMgPerKgDay: number;
  readonly basis: string;
}

const PUBLICATION = 'SCCS Notes of Guidance, 12th revision (SCCS/1647/22), Table 3A';

function fromTable(productType: string): ProductExposure {
  const row = rowById(exposureProductTypes, productType);
  const { label, relativeExposureMgPerKgDay, confidence, note } = row;
  const known = confidence === 'memory' ? 'from memory, check' : confidence;
  const figure = `${label} (${productType}): ${relativeExposureMgPerKgDay} mg/kg bw/day`;
  return {
    relativeExposureMgPerKgDay,
    basis: `${figure}, ${PUBLICATION}, ${known}${note === undefined ? '' : `. ${note}`}`,
  };
}

function findProductExposure(asked: z.output<typeof input>): Result<ProductExposure> {
  const { productType, relativeExposureMgPerKgDay } = asked;
  if (productType === undefined) {
    if (relativeExposureMgPerKgDay === undefined) {
      return refused(
        problem('exposure-basis-missing', 'productType', {
          allowed: 'productType or relativeExposureMgPerKgDay',
        }),
      );
    }
    const basis = `given: ${relativeExposureMgPerKgDay} mg/kg bw/day`;
    return done({ relativeExposureMgPerKgDay, basis });
  }
  if (relativeExposureMgPerKgDay !== undefined) {
    return refused(
      problem('exposure-basis-twice', 'relativeExposureMgPerKgDay', { found: relativeExposureMgPerKgDay }),
    );
  }
  return done(fromTable(productType));
}

const MINIMUM = rowById(exposureParameters, 'mos-minimum').value;

export const exposure = defineCalculation({
  name: 'exposure',
  title: 'Exposure to a substance, and its margin of safety',
  summary:
    'Systemic exposure to one substance of a product in mg per kg of body weight and day, and how many times the point of departure lies above it. Prepares the qualified assessor’s work and never replaces it.',
  equation:
    'SED = E x percent/100 x absorption/100; MoS = PoD x bioavailability/100 / SED; E mg of product per kg of body weight and day after the retention factor, PoD point of departure',
  validRange:
    'One substance in one product; exposures of several products add up. Exact: a margin of exactly 100 is at-least-100. Without exposure there is no finite margin, and none is given. Default absorption where nothing is known is 50 % (from memory); product types of a workshop are mapped by judgement.',
  sources: [
    { text: PUBLICATION, confidence: 'read' },
    { text: 'Rows hand-wash-soap, make-up-remover and eye products of that table', confidence: 'memory' },
    {
      text: 'MoS = PoD x bioavailability / SED, at least 100: as explained by consultants',
      confidence: 'read',
    },
  ],
  input,
  output: z.strictObject({
    exposureMgPerKgDay: z.number().describe('Systemic exposure dose, mg per kg of body weight and day'),
    basis: z.string().describe('Which exposure of the product was taken, where it stands, how it is known'),
    marginOfSafety: z
      .number()
      .optional()
      .describe('Point of departure over exposure; absent without a point of departure or without exposure'),
    verdict: z
      .enum(['at-least-100', 'below-100'])
      .optional()
      .describe('Judged exactly, where a point of departure is given'),
  }),
  example: {
    input: {
      productType: 'body-lotion',
      percent: 0.5,
      absorptionPercent: 20,
      pointOfDepartureMgPerKgDay: 75,
      bioavailabilityPercent: 100,
    },
    output: {
      exposureMgPerKgDay: 0.1232,
      basis: `Body lotion (body-lotion): 123.2 mg/kg bw/day, ${PUBLICATION}, read`,
      marginOfSafety: 608.7662337662338,
      verdict: 'at-least-100',
    },
  },
  compute(asked) {
    const product = findProductExposure(asked);
    if (!product.ok) return product;
    const exposureMgPerKgDay = findExposureMgPerKgDay({ ...asked, ...product.value });
    const found = { exposureMgPerKgDay: asNumber(exposureMgPerKgDay), basis: product.value.basis };
    const { pointOfDepartureMgPerKgDay, bioavailabilityPercent } = asked;
    if (pointOfDepartureMgPerKgDay === undefined) return done(found);
    const { marginOfSafety, isEnough } = judgeMarginOfSafety({
      exposureMgPerKgDay,
      pointOfDepartureMgPerKgDay,
      bioavailabilityPercent,
      minimum: MINIMUM,
    });
    return done({
      ...found,
      ...(marginOfSafety !== null && { marginOfSafety: asNumber(marginOfSafety) }),
      verdict: isEnough ? ('at-least-100' as const) : ('below-100' as const),
    });
  },
});
