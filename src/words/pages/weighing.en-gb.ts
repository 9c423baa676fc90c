import { sayDecimal, sayGrams } from '../say-figure.ts';

/** What is said where a weighing does not go as planned, at the bench and on the record. */
export const mishapWords = {
  resized: (wasGrams: string, isGrams: string) =>
    `Made ${Number(isGrams) < Number(wasGrams) ? 'smaller' : 'larger'}, from ${sayDecimal(wasGrams)} to ${sayGrams(isGrams)}, so that the percentages hold`,
  resizedBy: (item: string, reason: string) => (reason === '' ? item : `${item}. ${reason}`),
  spilt: (item: string, grams: string, lot: string) => `${item}: ${sayGrams(grams)} spilt of lot ${lot}`,
  readFirst: (item: string, wasGrams: string) => `${item}: Read as ${sayGrams(wasGrams)} first`,
  readSure: (item: string, grams: string) => `${item}: ${sayGrams(grams)} was asked about`,
  putRight: 'A slip, put right before it counted.',
  isSure: 'Looked at again: it is right.',
  inVessel: (item: string, gross: string, tare: string) =>
    `${item}: weighed in a vessel, ${sayGrams(gross)} gross less ${sayGrams(tare)} tare`,
};
