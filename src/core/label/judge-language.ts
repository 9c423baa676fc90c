import { because, type Judged, missing, notKnown, there } from './judged.ts';
import type { LabelQuestion, SaleCountry } from './label-question.ts';

const languageNames = new Intl.DisplayNames(['en-GB'], { type: 'language' });
const countryNames = new Intl.DisplayNames(['en-GB'], { type: 'region' });
const inWords = new Intl.ListFormat('en-GB', { type: 'conjunction' });
const either = new Intl.ListFormat('en-GB', { type: 'disjunction' });

const nameLanguages = (codes: readonly string[]): string =>
  inWords.format(codes.map((code) => languageNames.of(code) ?? code));

const sayCountry = ({ country, languages }: SaleCountry): string =>
  `${countryNames.of(country) ?? country} (${either.format(languages.map(nameLanguages))})`;

/**
 * Language of content, durability, precautions and function. The member states of the European Union set their own
 * (Regulation (EC) No 1223/2009, Article 19(5)), so it has to be known where the product is sold; elsewhere it is English.
 * What counts is what the label prints, not what somebody has written for it.
 */
export function judgeLanguage({ market, saleCountries = [], printedIn = [] }: LabelQuestion): Judged {
  if (printedIn.length === 0) return notKnown(because('label-languages-not-told'));
  const printed = nameLanguages(printedIn);
  if (market !== 'EU') {
    return printedIn.includes('en')
      ? there(printed)
      : missing(because('label-words-not-in-language', { countries: 'English' }), printed);
  }
  if (saleCountries.length === 0) return notKnown(because('label-sale-countries-missing'), printed);
  const lacking = saleCountries.filter(
    ({ languages }) => !languages.some((set) => set.every((code) => printedIn.includes(code))),
  );
  return lacking.length === 0
    ? there(printed)
    : missing(
        because('label-words-not-in-language', { countries: inWords.format(lacking.map(sayCountry)) }),
        printed,
      );
}
