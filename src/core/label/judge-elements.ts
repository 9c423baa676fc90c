import { exact } from '../quantity/index.ts';
import { because, type Judged, missing, notKnown, notNeeded, there, thereUnasked } from './judged.ts';
import type { LabelLaw, LabelQuestion, NoOpenedPeriod } from './label-question.ts';
import { EU_MEMBERS } from './place-of-address.ts';
import { sayDurability, sayDurabilityInUs } from './say-durability.ts';
import { splitLabelName } from './split-label-name.ts';
import { sayUsNetWeight } from './us-net-weight.ts';

export const judgeName = ({ productName }: LabelQuestion): Judged => thereUnasked(productName);

/** In the United States the statement of identity stands whatever the product looks like. */
export function judgeFunction({ market, functionText, isFunctionClear = false }: LabelQuestion): Judged {
  if (functionText.trim() !== '') return there(functionText.trim());
  if (isFunctionClear && market !== 'US') return notNeeded(because('label-function-clear'));
  return missing(because('label-function-missing'));
}

export function judgeContent(
  { market, declaredGrams }: LabelQuestion,
  { contentFromGrams }: LabelLaw,
): Judged {
  const grams = exact(declaredGrams);
  if (market === 'US') {
    const said = sayUsNetWeight(grams, 'declaredGrams');
    return said.ok ? there(said.value) : missing(because('label-content-below-ounces'));
  }
  const text = `${grams.toFixed()} g`;
  return grams.gte(contentFromGrams)
    ? there(text)
    : thereUnasked(text, because('label-content-too-small', { from: contentFromGrams }));
}

/** Directive 76/211/EEC: the mark is a choice, and a promise that the tins were filled and checked the average way. */
export function judgeEMark(question: LabelQuestion, { eMarkGrams }: LabelLaw): Judged {
  const { hasEMark = false, fillBasis, declaredGrams } = question;
  if (!hasEMark) return notNeeded(because('label-e-mark-optional'));
  const grams = exact(declaredGrams);
  const { from, upTo } = eMarkGrams;
  if (grams.lt(from) || grams.gt(upTo)) return missing(because('label-e-mark-outside', { from, upTo }));
  if (fillBasis !== 'average') return missing(because('label-e-mark-not-average'));
  return { ...thereUnasked('e'), sign: 'e-mark' };
}

export function judgeIngredients(question: LabelQuestion, list: readonly string[]): Judged {
  const { ingredients, allergens, market } = question;
  const text = list.join(', ');
  const nameless = ingredients
    .filter(({ name }) => name.trim() === '')
    .map(({ materialName }) => materialName);
  if (ingredients.length === 0) return missing(because('label-ingredients-missing'));
  if (nameless.length > 0) {
    return missing(because('label-name-unknown', { materials: nameless.join(', ') }), text);
  }
  const blends = ingredients.filter(({ name }) => splitLabelName(name).length > 1);
  if (blends.length > 0) {
    const materials = blends.map(({ materialName }) => materialName).join(', ');
    return notKnown(because('label-name-of-several', { materials }), text);
  }
  if (allergens.undecided.length > 0) {
    return missing(
      because('label-allergens-undecided', { substances: allergens.undecided.join(', ') }),
      text,
    );
  }
  return market === 'US' ? there(text, because('label-us-ingredients-place')) : there(text);
}

/** Federal law of the United States asks for no date; it is kept, written so that day and month cannot be mixed up. */
export function judgeDate(question: LabelQuestion): Judged {
  const { market, durability, durabilitySign = 'words' } = question;
  if (market === 'US') {
    const reason = because('label-date-kept');
    return durability === null ? notNeeded(reason) : thereUnasked(sayDurabilityInUs(durability.date), reason);
  }
  if (durability === null) return missing(because('label-keeping-unknown'));
  if (durability.mark !== 'date') return notNeeded(because('label-period-instead'));
  const text = sayDurability(durability.date, durabilitySign);
  return durabilitySign === 'hourglass' ? { ...there(text), sign: 'hourglass' } : there(text);
}

const NO_PERIOD: Readonly<Record<NoOpenedPeriod, string>> = {
  'single-use': 'label-no-period-used-up',
  'cannot-be-opened': 'label-no-period-closed',
  'does-not-spoil': 'label-no-period-keeps',
};

export function judgePeriod({ market, durability, noOpenedPeriod = null }: LabelQuestion): Judged {
  if (durability?.mark !== 'period-after-opening') return notNeeded(because('label-date-instead'));
  const { openedMonths } = durability;
  if (market === 'US' && openedMonths === null) return notNeeded(because('label-date-kept'));
  if (noOpenedPeriod !== null) return notNeeded(because(NO_PERIOD[noOpenedPeriod]));
  if (openedMonths === null) return missing(because('label-period-missing'));
  const text = `${openedMonths} M`;
  return { ...(market === 'US' ? thereUnasked(text) : there(text)), sign: 'open-jar' };
}

const plain = (text: string): string => text.toLowerCase().replace(/\s+/g, ' ').replaceAll('--', '—').trim();

/** 21 CFR 740.10, from memory: on the principal display panel of what nobody has shown to be safe. */
export const US_UNSUBSTANTIATED_WARNING = 'Warning—The safety of this product has not been determined.';

export function judgePrecautions(question: LabelQuestion): Judged {
  const { market, precautions, isSafetySubstantiated = true } = question;
  const text = precautions.text.trim();
  const required =
    market === 'US' && !isSafetySubstantiated
      ? [...precautions.required, US_UNSUBSTANTIATED_WARNING]
      : precautions.required;
  const lacking = required.filter((each) => !plain(text).includes(plain(each)));
  if (lacking.length > 0) {
    return missing(because('label-precautions-missing', { lacking: lacking.join('; ') }), text);
  }
  return text === '' ? notNeeded(because('label-no-precautions')) : there(text);
}

/** Not asked for by federal law of the United States, and kept: a lot is called back by it. */
export function judgeBatch({ market, batchNumber }: LabelQuestion): Judged {
  const text = batchNumber?.trim() ?? '';
  if (market === 'US') {
    const reason = because('label-batch-kept');
    return text === '' ? notNeeded(reason) : thereUnasked(text, reason);
  }
  return text === '' ? missing(because('label-batch-missing')) : there(text);
}

function isImported({ market, madeIn: { country, isNorthernIreland } }: LabelQuestion): boolean {
  if (market === 'GB' || market === 'US') return country !== market;
  return !EU_MEMBERS.has(country) && !(country === 'GB' && isNorthernIreland);
}

/**
 * Country of origin, for what is imported into the market. That goods made in Great Britain count as imported in
 * Northern Ireland, and the other way round not, is a reading of the Windsor Framework from memory; that imports into the
 * United States are marked (19 USC 1304) is from memory too.
 */
export function judgeOrigin(question: LabelQuestion): Judged {
  const { market, madeIn } = question;
  if (!isImported(question)) return notNeeded(because('label-not-imported', { market }));
  if (!/^[A-Z]{2}$/.test(madeIn.country)) return missing(because('label-origin-missing'));
  const name = new Intl.DisplayNames(['en-GB'], { type: 'region' }).of(madeIn.country) ?? madeIn.country;
  return there(`Made in ${madeIn.country === 'GB' ? 'the United Kingdom' : name}`);
}
