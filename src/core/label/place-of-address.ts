/**
 * `GB`: England, Scotland or Wales; `NI`: Northern Ireland; `EU`: a member state; `elsewhere`: another country; `unknown`:
 * nothing in it tells.
 */
export type AddressPlace = 'GB' | 'NI' | 'EU' | 'elsewhere' | 'unknown';

/** Form of a United Kingdom postcode (BS 7666, from memory); BT is Belfast and all Northern Ireland. */
const POSTCODE = /\b([A-Z]{1,2})\d[A-Z\d]? ?\d[A-Z]{2}\b/i;

/** What people write besides. */
const ALSO_CALLED: Readonly<Record<string, readonly string[]>> = {
  GB: ['united kingdom', 'uk', 'great britain', 'england', 'scotland', 'wales'],
  US: ['usa', 'us', 'united states of america'],
  IE: ['republic of ireland'],
  NL: ['the netherlands', 'holland'],
  CZ: ['czech republic'],
};

/** Member states as of 2026 (Treaty on European Union, Article 52). */
export const EU_MEMBERS: ReadonlySet<string> = new Set(
  'AT BE BG CY CZ DE DK EE ES FI FR GR HR HU IE IT LT LU LV MT NL PL PT RO SE SI SK'.split(' '),
);

/** An address names its country in English or as people there do. */
const LANGUAGES = 'en de fr es it nl pt pl sv da fi cs sk hu ro bg el hr sl et lv lt ga mt'.split(' ');
const LETTERS = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'];
/** Codes that were given up answer to the names of those that took their place: members first. */
const CODES = [...EU_MEMBERS, ...LETTERS.flatMap((one) => LETTERS.map((other) => `${one}${other}`))];

let known: ReadonlyMap<string, string> | undefined;

/** Names of countries in small letters, each with its code (Unicode CLDR); worked out once. */
function countryNames(): ReadonlyMap<string, string> {
  if (known) return known;
  const names = new Map<string, string>();
  for (const language of LANGUAGES) {
    const namer = new Intl.DisplayNames([language], { type: 'region', fallback: 'none' });
    for (const code of CODES) {
      const name = namer.of(code)?.toLowerCase();
      if (name !== undefined && !names.has(name)) names.set(name, code);
    }
  }
  for (const [code, others] of Object.entries(ALSO_CALLED)) for (const name of others) names.set(name, code);
  known = names;
  return names;
}

/** Reads off an address as it stands on a label where it lies, as far as it tells. */
export function placeOfAddress(address: string): AddressPlace {
  const parts = address.split(/[,\n]/).map((part) => part.trim().toLowerCase().replace(/\.$/, ''));
  const country = countryNames().get(parts.filter((part) => part !== '').at(-1) ?? '');
  const area = POSTCODE.exec(address)?.[1]?.toUpperCase();
  const isBritish = country === undefined || country === 'GB';
  if (parts.includes('northern ireland') || (isBritish && area === 'BT')) return 'NI';
  if (isBritish && (country === 'GB' || area !== undefined)) return 'GB';
  if (country === undefined) return 'unknown';
  return EU_MEMBERS.has(country) ? 'EU' : 'elsewhere';
}
