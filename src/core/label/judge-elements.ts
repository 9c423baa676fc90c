import { exact } from '../quantity/index.ts';
import type {
  LabelElement,
  LabelElementName,
  LabelLaw,
  LabelQuestion,
  LabelReason,
} from './label-question.ts';
import { placeOfAddress } from './place-of-address.ts';
import { sayDurability } from './say-durability.ts';

/** An element before its name and source are put on. */
export type Judged = Omit<LabelElement, 'element' | 'source'>;

const there = (text: string, reason: LabelReason | null = null): Judged => ({
  text,
  required: true,
  state: 'there',
  reason,
});
const missing = (reason: LabelReason, text = ''): Judged => ({
  text,
  required: true,
  state: 'missing',
  reason,
});
const notNeeded = (reason: LabelReason | null, text = ''): Judged => ({
  text,
  required: false,
  state: 'not-needed',
  reason,
});

export const judgeName = ({ productName }: LabelQuestion): Judged => ({
  ...notNeeded(null, productName),
  state: 'there',
});

export function judgeFunction({ functionText, isFunctionClear = false }: LabelQuestion): Judged {
  if (functionText.trim() !== '') return there(functionText.trim());
  if (isFunctionClear) return notNeeded({ code: 'label-function-clear', parameters: {} });
  return missing({ code: 'label-function-missing', parameters: {} });
}

export function judgeContent({ declaredGrams }: LabelQuestion, { contentFromGrams }: LabelLaw): Judged {
  const grams = exact(declaredGrams);
  const text = `${grams.toFixed()} g`;
  if (grams.gte(contentFromGrams)) return there(text);
  const reason = { code: 'label-content-too-small', parameters: { from: contentFromGrams } };
  return { ...there(text, reason), required: false };
}

export function judgeIngredients(question: LabelQuestion, list: readonly string[]): Judged {
  const { ingredients, allergens } = question;
  const text = list.join(', ');
  const nameless = ingredients
    .filter(({ name }) => name.trim() === '')
    .map(({ materialName }) => materialName);
  if (ingredients.length === 0) return missing({ code: 'label-ingredients-missing', parameters: {} });
  if (nameless.length > 0) {
    return missing({ code: 'label-name-unknown', parameters: { materials: nameless.join(', ') } }, text);
  }
  if (allergens.undecided.length > 0) {
    const substances = allergens.undecided.join(', ');
    return missing({ code: 'label-allergens-undecided', parameters: { substances } }, text);
  }
  return there(text);
}

export function judgeDate({ durability }: LabelQuestion): Judged {
  if (durability === null) return missing({ code: 'label-keeping-unknown', parameters: {} });
  if (durability.mark === 'date') return there(sayDurability(durability.date));
  return notNeeded({ code: 'label-period-instead', parameters: {} });
}

export function judgePeriod({ durability }: LabelQuestion): Judged {
  if (durability?.mark !== 'period-after-opening')
    return notNeeded({ code: 'label-date-instead', parameters: {} });
  const { openedMonths } = durability;
  if (openedMonths === null) return missing({ code: 'label-period-missing', parameters: {} });
  return there(`${openedMonths} M`);
}

const plain = (text: string): string => text.toLowerCase().replace(/\s+/g, ' ').trim();

export function judgePrecautions({ precautions }: LabelQuestion): Judged {
  const text = precautions.text.trim();
  const lacking = precautions.required.filter((each) => !plain(text).includes(plain(each)));
  if (lacking.length > 0) {
    return missing({ code: 'label-precautions-missing', parameters: { lacking: lacking.join('; ') } }, text);
  }
  return text === '' ? notNeeded({ code: 'label-no-precautions', parameters: {} }) : there(text);
}

export function judgeBatch({ batchNumber }: LabelQuestion): Judged {
  const text = batchNumber?.trim() ?? '';
  return text === '' ? missing({ code: 'label-batch-missing', parameters: {} }) : there(text);
}

/**
 * Name and address of the responsible person, who is established where the product is sold. An address of the United
 * Kingdom is recognised by its postcode or its country; of any other it is taken that the workshop knows.
 */
export function judgeResponsible(question: LabelQuestion, { euAddressInGbUntil }: LabelLaw): Judged {
  const { market, placedOn, responsible } = question;
  const parts = [responsible.name, responsible.address].map((part) => part.trim().replace(/\s*\n\s*/g, ', '));
  const text = parts.filter((part) => part !== '').join(', ');
  if (parts.includes('')) return missing({ code: 'label-responsible-missing', parameters: { market } }, text);
  const place = placeOfAddress(responsible.address);
  if (market !== 'GB') {
    return place === 'GB'
      ? missing({ code: 'label-responsible-outside', parameters: { market } }, text)
      : there(text);
  }
  if (place !== 'unknown') return there(text);
  if (placedOn > euAddressInGbUntil) {
    return missing({ code: 'label-responsible-outside', parameters: { market } }, text);
  }
  return there(text, { code: 'label-address-taken-until', parameters: { until: euAddressInGbUntil } });
}

/** Member states as of 2026 (Treaty on European Union, Article 52). */
const EU_MEMBERS = new Set(
  'AT BE BG CY CZ DE DK EE ES FI FR GR HR HU IE IT LT LU LV MT NL PL PT RO SE SI SK'.split(' '),
);

/**
 * Country of origin, for what is imported into the market. That goods made in Great Britain count as imported in
 * Northern Ireland, and the other way round not, is a reading of the Windsor Framework from memory.
 */
export function judgeOrigin({ market, madeIn: { country, isNorthernIreland } }: LabelQuestion): Judged {
  const isFromUnion = EU_MEMBERS.has(country) || (country === 'GB' && isNorthernIreland);
  const isImported = market === 'GB' ? country !== 'GB' : !isFromUnion;
  if (!isImported) return notNeeded({ code: 'label-not-imported', parameters: { market } });
  if (!/^[A-Z]{2}$/.test(country)) return missing({ code: 'label-origin-missing', parameters: {} });
  const name = new Intl.DisplayNames(['en-GB'], { type: 'region' }).of(country) ?? country;
  return there(`Made in ${country === 'GB' ? 'the United Kingdom' : name}`);
}

export type ElementJudges = Readonly<Record<LabelElementName, Judged>>;
