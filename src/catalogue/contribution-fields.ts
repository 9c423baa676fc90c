import { z } from 'zod';

const PLANT_PARTS = [
  'flower',
  'leaf',
  'peel',
  'seed',
  'root',
  'wood',
  'bark',
  'herb',
  'fruit',
  'resin',
  'whole',
] as const;
const PROCESSES = [
  'expressed',
  'distilled',
  'absolute',
  'concrete',
  'furocoumarin-free',
  'rectified',
  'co2',
  'extract',
  'crude',
] as const;

/** The sum of digit x position from the right, modulo 10, is the check digit of a CAS registry number. */
function hasCasCheckDigit(cas: string): boolean {
  const digits = [...cas.replaceAll('-', '')].map(Number).reverse();
  const sum = digits.slice(1).reduce((total, digit, index) => total + digit * (index + 1), 0);
  return sum % 10 === digits[0];
}

const casNumber = z
  .string()
  .regex(/^\d{2,7}-\d{2}-\d$/)
  .refine(hasCasCheckDigit, { params: { code: 'cas-check-digit-wrong' } })
  .describe('CAS number; one that several materials share decides only with plant part or process');

export const substanceFields = {
  name: z.string().trim().min(1).describe('Name as on the supplier’s paper or the label'),
  cas: casNumber.optional(),
  plantPart: z.enum(PLANT_PARTS).optional().describe('Part of the plant, of a natural material'),
  process: z.enum(PROCESSES).optional().describe('How a natural material was won'),
};

export const percentOfProduct = z
  .number()
  .min(0)
  .max(100)
  .describe('Percent by mass of the finished product');

export const day = (meaning: string) => z.iso.date().describe(meaning);

export const market = z
  .enum(['EU', 'NI', 'GB', 'US'])
  .describe('European Union, Northern Ireland (follows the EU), Great Britain, United States (federal)');

export const use = z
  .enum(['leave-on', 'rinse-off'])
  .describe('Whether the product stays on or is washed off');
