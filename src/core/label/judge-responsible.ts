import { because, type Judged, missing, notKnown, notNeeded, there } from './judged.ts';
import type { LabelLaw, LabelQuestion } from './label-question.ts';
import { placeOfAddress } from './place-of-address.ts';

const oneLine = (text: string): string => text.trim().replace(/\s*\n\s*/g, ', ');

/**
 * Name and address of the responsible person, who is established where the product is sold (Article 4 and 19(1)(a)). Where
 * an address lies is read off its country, or off a postcode of the United Kingdom; one that tells neither does not
 * identify the place, and is not taken for right. The United States want name and place of business, wherever that is
 * (21 CFR 701.12).
 */
export function judgeResponsible(question: LabelQuestion, { euAddressInGbUntil }: LabelLaw): Judged {
  const { market, placedOn, responsible } = question;
  const parts = [responsible.name, responsible.address].map(oneLine);
  const text = parts.filter((part) => part !== '').join(', ');
  if (parts.includes('')) return missing(because('label-responsible-missing', { market }), text);
  if (market === 'US') return there(text);
  const place = placeOfAddress(responsible.address);
  if (place === 'unknown') return notKnown(because('label-responsible-where'), text);
  const outside = missing(because('label-responsible-outside', { market }), text);
  if (market !== 'GB') return place === 'EU' || place === 'NI' ? there(text) : outside;
  if (place === 'GB' || place === 'NI') return there(text);
  if (place === 'elsewhere' || placedOn > euAddressInGbUntil) return outside;
  return there(text, because('label-address-taken-until', { until: euAddressInGbUntil }));
}

/** `OH 44101` or `OH 44101-1234` at the end of a line: the form of a United States address (from memory). */
const US_ADDRESS = /\b[A-Z]{2} \d{5}(?:-\d{4})?\s*(?:$|,|\n)/m;
/** Ten digits, area and exchange from 2 on, with or without the country's 1 (North American Numbering Plan, from memory). */
const US_NUMBER = /(?:^|[^\d+])(?:\+?1[ .-]*)?\(?[2-9]\d{2}\)?[ .-]*[2-9]\d{2}[ .-]*\d{4}(?!\d)/;
const MAIL_OR_SITE = /\b[a-z0-9-]+(?:\.[a-z0-9-]+)*\.[a-z]{2,}\b/i;

/**
 * An address in the United States, a telephone number there, or electronic contact, which may be a website, for reports
 * of harm (21 USC 364e, as MoCRA added it).
 */
export function judgeContact({ responsible }: LabelQuestion): Judged {
  const contact = oneLine(responsible.contact ?? '');
  const isOf = [US_ADDRESS, US_NUMBER, MAIL_OR_SITE].some((form) => form.test(contact));
  if (isOf) return there(contact);
  if (US_ADDRESS.test(responsible.address)) return notNeeded(because('label-contact-is-address'));
  return contact === ''
    ? missing(because('label-contact-missing'))
    : missing(because('label-contact-not-domestic'), contact);
}
