import { because, type Judged, missing, notNeeded, there } from './judged.ts';
import type { LabelLaw, LabelQuestion } from './label-question.ts';
import { placeOfAddress } from './place-of-address.ts';

const oneLine = (text: string): string => text.trim().replace(/\s*\n\s*/g, ', ');

/**
 * Name and address of the responsible person, who is established where the product is sold. An address of the United
 * Kingdom is recognised by its postcode or its country; of any other it is taken that the workshop knows. The United
 * States want name and place of business, wherever that is (21 CFR 701.12).
 */
export function judgeResponsible(question: LabelQuestion, { euAddressInGbUntil }: LabelLaw): Judged {
  const { market, placedOn, responsible } = question;
  const parts = [responsible.name, responsible.address].map(oneLine);
  const text = parts.filter((part) => part !== '').join(', ');
  if (parts.includes('')) return missing(because('label-responsible-missing', { market }), text);
  if (market === 'US') return there(text);
  const place = placeOfAddress(responsible.address);
  if (market !== 'GB') {
    return place === 'GB' ? missing(because('label-responsible-outside', { market }), text) : there(text);
  }
  if (place !== 'unknown') return there(text);
  if (placedOn > euAddressInGbUntil) {
    return missing(because('label-responsible-outside', { market }), text);
  }
  return there(text, because('label-address-taken-until', { until: euAddressInGbUntil }));
}

/** `OH 44101` or `OH 44101-1234` at the end of a line: the form of a United States address (from memory). */
const US_ADDRESS = /\b[A-Z]{2} \d{5}(?:-\d{4})?\s*(?:$|,|\n)/m;

/** An address in the United States, a telephone number there, or electronic contact, for reports of harm. */
export function judgeContact({ responsible }: LabelQuestion): Judged {
  const contact = oneLine(responsible.contact ?? '');
  if (contact !== '') return there(contact);
  return US_ADDRESS.test(responsible.address)
    ? notNeeded(because('label-contact-is-address'))
    : missing(because('label-contact-missing'));
}
