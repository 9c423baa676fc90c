/** `GB`: England, Scotland or Wales; `NI`: Northern Ireland; `unknown`: nothing in it tells. */
export type AddressPlace = 'GB' | 'NI' | 'unknown';

/** Form of a United Kingdom postcode (BS 7666, from memory); BT is Belfast and all Northern Ireland. */
const POSTCODE = /\b([A-Z]{1,2})\d[A-Z\d]? ?\d[A-Z]{2}\b/;
const COUNTRIES = new Set(['united kingdom', 'uk', 'great britain', 'england', 'scotland', 'wales']);

/** Reads off an address as it stands on a label where in the United Kingdom it lies, as far as it tells. */
export function placeOfAddress(address: string): AddressPlace {
  const area = POSTCODE.exec(address)?.[1];
  const parts = address.split(/[,\n]/).map((part) => part.trim().toLowerCase().replace(/\.$/, ''));
  if (area === 'BT' || parts.includes('northern ireland')) return 'NI';
  return area !== undefined || COUNTRIES.has(parts.at(-1) ?? '') ? 'GB' : 'unknown';
}
