import type { z } from 'zod';
import type { productFiles } from '../../src/contract/index.ts';

type Details = z.input<typeof productFiles.productFileDetails>;

/** Everything that only a person can write. Invented. */
export const writtenFile = (materialIds: readonly string[], more: Partial<Details> = {}): Details => ({
  description: 'A whipped butter, cream-coloured, in a round tin with a screw lid.',
  functions: materialIds.map((materialId) => ({ materialId, text: 'emollient' })),
  physical: 'Cream-coloured, soft, melts on the skin.',
  stability: 'Kept a year at 20 °C: no change of smell or colour.',
  microbiology: 'No water is in it.',
  waterInUse: 'no',
  impurities: 'As the suppliers declare.',
  packaging: 'Tinplate with a lacquer, declared for cosmetics by its maker.',
  normalUse: 'Rubbed into the skin of the body once or twice a day.',
  gmpStatement: 'Made by our own written rules of good practice.',
  animalTesting: 'We test nothing on animals, and our suppliers declare the same.',
  hasNoClaims: true,
  notification: { gbReference: 'GB-1', euReference: 'EU-1' },
  ...more,
});

/** The shortest file that opens as a PDF does. */
export const smallPdf = (text: string): string => Buffer.from(`%PDF-1.4\n% ${text}\n`).toString('base64');
