import { z } from 'zod';
import { done } from '../core/problem.ts';
import { assessLowWater, type JudgedCriterion } from '../core/safety/index.ts';
import { lowWaterSources } from '../reference/index.ts';
import { defineCalculation } from './define-calculation.ts';
import { lowWaterTables } from './low-water-tables.ts';
import { rowById } from './row-by-id.ts';

const ids = <Row extends { readonly id: string }>(rows: readonly Row[]) =>
  rows.map(({ id }) => id) as [string, ...string[]];
const percent = (meaning: string) => z.number().min(0).max(100).describe(meaning);

const criterionFields = {
  id: z.string().describe('Row of the criterion'),
  verdict: z.enum(['met', 'not-met', 'not-told']).describe('not-told: nobody has said or measured it'),
  isAtFigure: z
    .boolean()
    .describe('true: exactly at the figure, not met as read, met as the standard is remembered'),
  source: z.string().describe('Where the criterion was read'),
  confidence: z.string().describe('How it is known: memory means check'),
};

const tellCriterion = ({ id, verdict, isAtFigure, source, confidence }: JudgedCriterion) => ({
  id,
  verdict,
  isAtFigure,
  source: rowById(lowWaterSources, source).title,
  confidence,
});

export const lowWater = defineCalculation({
  name: 'low-water',
  title: 'Products with little or no water',
  summary:
    'Whether a product is microbiologically low-risk by a criterion of ISO 29621, and what to be careful of, from what is known of its formula and its use. Prepares the qualified assessor’s work and never replaces it.',
  equation:
    'low-risk when one criterion is met: no water and none comes in; water activity < 0.75; pH < 3 or > 10; ethanol > 20 %; filled > 65 °C; organic solvent; oxidising; aluminium chlorohydrate > 25 %',
  validRange:
    'The criteria strictly, as a test laboratory lists them; the standard is remembered with “at most” and “at least”. What nobody told meets no criterion. Low risk is a claim to be justified in the safety report; it says that tests can be left out, not that a product is clean.',
  sources: [
    { text: 'ISO 29621:2017, criteria as listed by a test laboratory', confidence: 'read' },
    { text: 'Water activity over saturated solutions (Greenspan 1977)', confidence: 'memory' },
    { text: 'Levels of antioxidants and starch: pages of makers and brands', confidence: 'read' },
  ],
  input: z.strictObject({
    hasWaterPhase: z
      .boolean()
      .describe('Water, hydrosol, aloe, honey, milk, fresh plant or the like is weighed in'),
    canWaterComeIn: z
      .boolean()
      .optional()
      .describe('Water can come in while it is used: in the shower, with wet fingers; not told: unknown'),
    canWaterCondense: z
      .boolean()
      .optional()
      .describe('It may stand cold and uncovered, so that water condenses on it'),
    waterActivity: z.number().min(0).max(1).optional().describe('Measured water activity, a fraction'),
    ph: z
      .number()
      .min(-1)
      .max(15)
      .optional()
      .describe('Measured pH; of a bar of soap that of its 1 % solution'),
    ethanolPercent: percent('Ethanol, percent by volume').optional(),
    fillingTemperatureCelsius: z.number().min(-50).max(300).optional().describe('Temperature when filled'),
    aluminiumChlorohydratePercent: percent('Aluminium chlorohydrate, percent by mass').optional(),
    isOrganicSolventBased: z.boolean().optional().describe('Based on an organic solvent'),
    isOxidising: z.boolean().optional().describe('An oxidising product'),
    dissolves: z
      .array(z.enum(ids(lowWaterTables.solutions)))
      .max(10)
      .optional()
      .describe('What in it dissolves in water that comes in'),
    antioxidants: z
      .array(
        z.strictObject({
          id: z.enum(ids(lowWaterTables.antioxidants)).describe('Row of the antioxidant'),
          percent: percent('Percent by mass of what the row’s use names'),
        }),
      )
      .max(10)
      .optional()
      .describe('Antioxidants in it'),
    starchPercent: percent('Air-dry starch, percent by mass of the product').optional(),
  }),
  output: z.strictObject({
    lowRisk: z.enum(['yes', 'no', 'unknown']).describe('unknown is never to be taken as yes'),
    reason: z
      .enum([
        'criterion-met',
        'water-phase',
        'water-phase-not-told',
        'solution-too-wet',
        'water-comes-in',
        'water-in-use-not-told',
      ])
      .describe('What decided'),
    decidedBy: z.strictObject(criterionFields).nullable().describe('The criterion that is met, or null'),
    criteria: z.array(z.strictObject(criterionFields)).describe('Each criterion with its verdict'),
    open: z
      .array(z.string())
      .describe('Criteria whose fact nobody has told: measuring could change the answer'),
    cautions: z
      .array(
        z.enum([
          'low-water-comes-in',
          'low-water-may-come-in',
          'low-water-condenses',
          'low-water-antioxidant',
          'low-water-starch',
          'low-water-write-down',
        ]),
      )
      .describe('What to be careful of'),
    antioxidants: z
      .array(
        z.strictObject({
          id: z.string().describe('Row of the antioxidant'),
          percent: z.number().describe('As given'),
          minPercent: z.number().optional().describe('From where makers use it'),
          maxPercent: z.number().optional().describe('Up to where makers use it'),
          verdict: z.enum(['below', 'usual', 'above', 'no-level']).describe('Against the usual levels'),
          confidence: z.string().describe('How the levels are known'),
        }),
      )
      .describe('Each antioxidant against the levels that makers use'),
    boundWaterPercent: z
      .strictObject({
        typical: z.number().describe('At the typical moisture of starch'),
        most: z.number().describe('At the most'),
      })
      .nullable()
      .describe('Water bound in the starch, percent by mass of the product; null: no starch'),
  }),
  example: {
    input: {
      hasWaterPhase: false,
      canWaterComeIn: true,
      canWaterCondense: false,
      dissolves: ['saturated-solution-sucrose'],
      antioxidants: [{ id: 'tocopherol', percent: 0.1 }],
      starchPercent: 10,
    },
    output: {
      lowRisk: 'no',
      reason: 'solution-too-wet',
      decidedBy: null,
      criteria: [
        ...(['ph-low', 'ph-high'] as const).map((id) => notTold(id)),
        { ...notTold('anhydrous'), verdict: 'not-met' },
        ...['alcohol', 'fill-temperature', 'water-activity', 'solvent', 'oxidising', 'aluminium'].map((id) =>
          notTold(id),
        ),
      ],
      open: [
        'ph-low',
        'ph-high',
        'alcohol',
        'fill-temperature',
        'water-activity',
        'solvent',
        'oxidising',
        'aluminium',
      ],
      cautions: ['low-water-comes-in', 'low-water-antioxidant', 'low-water-starch'],
      antioxidants: [
        {
          id: 'tocopherol',
          percent: 0.1,
          minPercent: 0.02,
          maxPercent: 0.2,
          verdict: 'usual',
          confidence: 'read',
        },
      ],
      boundWaterPercent: { typical: 1.3, most: 1.6 },
    },
  },
  compute({ ...facts }) {
    const answer = assessLowWater(facts, lowWaterTables);
    const { lowRisk, reason, criterion, criteria, boundWaterPercent } = answer;
    return done({
      lowRisk,
      reason,
      decidedBy: criterion && tellCriterion(criterion),
      criteria: criteria.map(tellCriterion),
      open: [...answer.open],
      cautions: [...answer.cautions],
      antioxidants: answer.antioxidants.map(
        ({ id, percent, minPercent, maxPercent, verdict, confidence }) => ({
          id,
          percent,
          ...(minPercent !== undefined && { minPercent }),
          ...(maxPercent !== undefined && { maxPercent }),
          verdict,
          confidence,
        }),
      ),
      boundWaterPercent,
    });
  },
});

/** For the example: a criterion of which nothing was told. */
function notTold(id: string) {
  return {
    id,
    verdict: 'not-told' as const,
    isAtFigure: false,
    source: 'Test laboratory FAQ listing the ISO 29621 criteria for microbiologically low-risk cosmetics',
    confidence: 'read',
  };
}
